using Materia.Catalogue;

namespace Materia.Api.Ingredients;

/// <summary>An ingredient in short, for lists.</summary>
public sealed record IngredientSummary
{
    private static readonly Property[] Shown =
    [
        Property.MeltingRange, Property.MeltingPoint, Property.SlipMeltingPoint, Property.DropPoint, Property.IodineValue, Property.SaponificationValue,
        Property.Density, Property.RelativeDensity, Property.Viscosity, Property.RequiredHlb,
        Property.Hlb, Property.CationExchangeCapacity, Property.SwellingVolume, Property.EffectivePh, Property.ShelfLife,
    ];

    /// <summary>The id.</summary>
    public required string Id { get; init; }

    /// <summary>The common name.</summary>
    public required string Name { get; init; }

    /// <summary>The INCI name, where the catalogue has one.</summary>
    public string? InciName { get; init; }

    /// <summary>What kind of material it is.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>What it is and what it is like to work with, in a few sentences; its source stands in the record.</summary>
    public string? Description { get; init; }

    /// <summary>
    /// The figures that makers look at first, as computations take them: melting, iodine value, saponification value, density,
    /// viscosity, required HLB, HLB, cation-exchange capacity, swelling, effective pH and shelf life. What is not known is absent; the whole record has the rest.
    /// </summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>Sums up <paramref name="ingredient"/>.</summary>
    public static IngredientSummary Of(Ingredient ingredient) => new()
    {
        Id = ingredient.Id,
        Name = ingredient.CommonName(),
        InciName = ingredient.InciName(),
        Kind = ingredient.Kind,
        Description = ingredient.Description?.Text,
        Figures = new PreparedFigures([.. ingredient.Properties
            .Where(f => Array.IndexOf(Shown, f.Property) >= 0)
            .GroupBy(f => (f.Property, f.At))
            .Select(g => g.FirstOrDefault(f => f.Used) ?? g.First())
            .OrderBy(f => Array.IndexOf(Shown, f.Property))]),
    };
}
