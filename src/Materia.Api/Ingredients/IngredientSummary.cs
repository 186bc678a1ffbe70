using Materia.Catalogue;

namespace Materia.Api.Ingredients;

/// <summary>An ingredient in short, for lists.</summary>
public sealed record IngredientSummary
{
    private static readonly Property[] Shown =
    [
        Property.MeltingRange, Property.MeltingPoint, Property.SlipMeltingPoint, Property.DropPoint, Property.IodineValue, Property.SaponificationValue,
        Property.Density, Property.RelativeDensity, Property.Viscosity, Property.RequiredHlb,
    ];

    /// <summary>The id.</summary>
    public required string Id { get; init; }

    /// <summary>The common name.</summary>
    public required string Name { get; init; }

    /// <summary>The INCI name, where the catalogue has one.</summary>
    public string? InciName { get; init; }

    /// <summary>What kind of material it is.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>
    /// The figures that makers look at first, as computations take them: melting, iodine value, saponification value, density,
    /// viscosity and required HLB. What is not known is absent; the whole record has the rest.
    /// </summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>Sums up <paramref name="ingredient"/>.</summary>
    public static IngredientSummary Of(Ingredient ingredient) => new()
    {
        Id = ingredient.Id,
        Name = ingredient.CommonName(),
        InciName = ingredient.InciName(),
        Kind = ingredient.Kind,
        Figures = new PreparedFigures([.. ingredient.Properties
            .Where(f => Array.IndexOf(Shown, f.Property) >= 0)
            .GroupBy(f => (f.Property, f.At))
            .Select(g => g.FirstOrDefault(f => f.Used) ?? g.First())
            .OrderBy(f => Array.IndexOf(Shown, f.Property))]),
    };
}
