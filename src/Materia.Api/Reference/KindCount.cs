using Materia.Catalogue;

namespace Materia.Api.Reference;

/// <summary>A kind of material and how many ingredients are of it.</summary>
public sealed record KindCount
{
    /// <summary>The kind.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>Its name in words.</summary>
    public required string Title { get; init; }

    /// <summary>How many ingredients are of it.</summary>
    public required int Ingredients { get; init; }

    /// <summary>The path of the search that finds them.</summary>
    public required string Search { get; init; }

    /// <summary>All kinds, in the catalogue's order.</summary>
    public static IReadOnlyList<KindCount> All(Release release)
    {
        var counts = release.Content.Ingredients.CountBy(i => i.Kind).ToDictionary();
        return
        [
            .. Enum.GetValues<IngredientKind>().Select(kind => new KindCount
            {
                Kind = kind,
                Title = TitleOf(kind),
                Ingredients = counts.GetValueOrDefault(kind),
                Search = "/v1/ingredients?kind=" + KebabCase<IngredientKind>.Word(kind),
            }),
        ];
    }

    private static string TitleOf(IngredientKind kind)
    {
        if (kind == IngredientKind.PhAdjuster)
        {
            return "pH adjuster";
        }

        var words = KebabCase<IngredientKind>.Word(kind).Replace('-', ' ');
        return char.ToUpperInvariant(words[0]) + words[1..];
    }
}
