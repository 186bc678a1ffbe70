namespace Materia.Catalogue.Inventory;

/// <summary>
/// An entry of the official European inventory of cosmetic ingredient names, as a user imported it. It says what a name stands for
/// and no more: nothing of it was curated.
/// </summary>
public sealed record InventoryEntry
{
    /// <summary>The INCI name as the inventory prints it, in capitals, spaces tidied; no two entries share one.</summary>
    public required string InciName { get; init; }

    /// <summary>The international non-proprietary name, where it has one.</summary>
    public string? InnName { get; init; }

    /// <summary>The name in the European Pharmacopoeia, where it has one.</summary>
    public string? PharmacopoeiaName { get; init; }

    /// <summary>The CAS numbers whose check digits hold, in the order of the inventory.</summary>
    public IReadOnlyList<string> CasNumbers { get; init; } = [];

    /// <summary>The EC numbers whose check digits hold, in the order of the inventory.</summary>
    public IReadOnlyList<string> EcNumbers { get; init; } = [];

    /// <summary>The official functions in kebab case, such as <c>skin-conditioning-emollient</c>.</summary>
    public IReadOnlyList<string> Functions { get; init; } = [];

    /// <summary>The chemical name or description.</summary>
    public string? Description { get; init; }

    /// <summary>The inventory's pointer to the annexes that restrict the ingredient, as it is printed.</summary>
    public string? Restriction { get; init; }
}
