using Materia.Api.Serving;
using Materia.Catalogue.Inventory;

namespace Materia.Api.Inventory;

/// <summary>An entry of the official inventory of names. It was imported as it is; only where it names curated ingredients has anybody looked at it.</summary>
public sealed record InventoryItem
{
    /// <summary>The INCI name as the inventory prints it.</summary>
    public required string InciName { get; init; }

    /// <summary>The international non-proprietary name, where it has one.</summary>
    public string? InnName { get; init; }

    /// <summary>The name in the European Pharmacopoeia, where it has one.</summary>
    public string? PharmacopoeiaName { get; init; }

    /// <summary>The CAS numbers; those with a wrong check digit were left out at the import.</summary>
    public IReadOnlyList<string> CasNumbers { get; init; } = [];

    /// <summary>The EC numbers; those with a wrong check digit were left out at the import.</summary>
    public IReadOnlyList<string> EcNumbers { get; init; } = [];

    /// <summary>The official functions in kebab case.</summary>
    public IReadOnlyList<string> Functions { get; init; } = [];

    /// <summary>The chemical name or description.</summary>
    public string? Description { get; init; }

    /// <summary>The inventory's pointer to the annexes that restrict the ingredient; look the annex up, the inventory is no law.</summary>
    public string? Restriction { get; init; }

    /// <summary>Whether a curated ingredient carries this INCI name.</summary>
    public required bool Curated { get; init; }

    /// <summary>The ids of the curated ingredients that carry this INCI name.</summary>
    public IReadOnlyList<string> Ingredients { get; init; } = [];

    /// <summary>The ids of curated ingredients that only share a CAS number with the entry: near kin, seldom the same.</summary>
    public IReadOnlyList<string> SameNumber { get; init; } = [];

    /// <summary>Puts an entry beside its links.</summary>
    public static InventoryItem Of(InventoryEntry entry, ServedInventory served)
    {
        var ingredients = served.Links.WithName(entry);
        return new InventoryItem
        {
            InciName = entry.InciName,
            InnName = entry.InnName,
            PharmacopoeiaName = entry.PharmacopoeiaName,
            CasNumbers = entry.CasNumbers,
            EcNumbers = entry.EcNumbers,
            Functions = entry.Functions,
            Description = entry.Description,
            Restriction = entry.Restriction,
            Curated = ingredients.Count > 0,
            Ingredients = ingredients,
            SameNumber = served.Links.WithNumberOnly(entry),
        };
    }
}
