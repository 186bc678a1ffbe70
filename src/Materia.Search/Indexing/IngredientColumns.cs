using Materia.Catalogue;
using Materia.Search.Ranges;

namespace Materia.Search.Indexing;

/// <summary>
/// What filters and facets look at, in arrays by the ingredients' ordinals. The catalogue doesn't change within a release and is
/// small, so one pass over an array costs less than a numeric index does, keeps every figure as exact as it is stored, and can say
/// which figure it was that answered.
/// </summary>
internal sealed class IngredientColumns
{
    private readonly IReadOnlyList<RangeFigure>[][] figures;

    /// <summary>Reads the columns off <paramref name="ingredients"/> and beside them the computed figures.</summary>
    public IngredientColumns(IReadOnlyList<Ingredient> ingredients, ComputedColumns computed)
    {
        Kinds = [.. ingredients.Select(i => i.Kind)];
        Origins = [.. ingredients.Select(i => i.Origin?.From)];
        Functions = [.. ingredients.Select(i => i.Functions.Select(f => f.Function).Distinct(StringComparer.Ordinal).ToArray())];
        Charges = [.. ingredients.Select(i => i.Charge?.Charge)];
        Groups = [.. ingredients.Select(i => i.SubstitutionGroups.Select(m => m.Group).Distinct(StringComparer.Ordinal).ToArray())];
        Acids = [.. ingredients.Select(AcidShares.Of)];
        figures = [.. PropertyGroups.All.Select(g => computed.Find(g) ?? [.. ingredients.Select(i => GroupFigures.Of(i, g))])];
    }

    /// <summary>The kind of each ingredient.</summary>
    public IngredientKind[] Kinds { get; }

    /// <summary>The kingdom that each comes from, where it is known.</summary>
    public OriginKind?[] Origins { get; }

    /// <summary>The functions of each, none twice.</summary>
    public string[][] Functions { get; }

    /// <summary>The charge of each in water, where it is known.</summary>
    public IonicCharge?[] Charges { get; }

    /// <summary>The substitution groups of each, none twice.</summary>
    public string[][] Groups { get; }

    /// <summary>The fatty acids of each.</summary>
    public AcidShares[] Acids { get; }

    /// <summary>The figures of each in one group.</summary>
    public IReadOnlyList<RangeFigure>[] Figures(PropertyGroup group) => figures[(int)group];
}
