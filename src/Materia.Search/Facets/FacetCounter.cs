using Materia.Catalogue;
using Materia.Search.Indexing;

namespace Materia.Search.Facets;

/// <summary>Counts the facets of a set of matches.</summary>
internal sealed class FacetCounter(IngredientColumns columns)
{
    private readonly FacetColumn kind = new([.. columns.Kinds.Select(k => new[] { KebabCase<IngredientKind>.Word(k) })]);
    private readonly FacetColumn function = new(columns.Functions);
    private readonly FacetColumn origin = new([.. columns.Origins.Select(o => o is { } from ? new[] { KebabCase<OriginKind>.Word(from) } : [])]);
    private readonly FacetColumn charge = new([.. columns.Charges.Select(c => c is { } known ? new[] { KebabCase<IonicCharge>.Word(known) } : [])]);
    private readonly FacetColumn group = new(columns.Groups);

    /// <summary>Counts over the ingredients with these ordinals.</summary>
    public SearchFacets Count(IReadOnlyList<int> ingredients) =>
        new(kind.Count(ingredients), function.Count(ingredients), origin.Count(ingredients), charge.Count(ingredients), group.Count(ingredients));
}
