using Materia.Catalogue;
using Materia.Regulation.Lookup;

namespace Materia.Regulation.Contents;

/// <summary>Works out what a material consists of.</summary>
internal static class ContentReading
{
    private const string Own = "own";
    private const string Citral = "5392-40-5";

    // The two halves of citral; where both are stated the sum is not counted again.
    private static readonly string[] CitralHalves = ["106-26-3", "141-27-5"];

    /// <summary>Reads a material with its parts and their constituents.</summary>
    public static IngredientContents Read(Ingredient ingredient, Release release)
    {
        var whole = MaterialPartShare.Of(ingredient);
        var parts = ingredient.Parts.Count == 0 ? [] : MaterialPartShare.Of(ingredient, release);
        List<ContentShare> shares = [Content(whole, MatchedAs.Itself), .. parts.Select(p => Content(p, MatchedAs.Part))];
        var unaccounted = parts.Prepend(whole).Where(p => p.Ingredient is not null).Sum(p => AddConstituents(p.Ingredient!, p, shares));
        return new IngredientContents(shares, Math.Min(100, unaccounted), parts.Prepend(whole).Any(p => p.Ingredient is { } i && IsMixtureOfUnknownParts(i)));
    }

    private static ContentShare Content(MaterialPartShare part, MatchedAs place)
    {
        var keys = part.Ingredient is { } known ? ContentKeys.Of(known) : ContentKeys.Of(part.Name, part.Cas);
        if (place == MatchedAs.Part && part.InciName is { } inci)
        {
            keys = [.. keys.Union(ContentKeys.Of(inci, null), StringComparer.Ordinal)];
        }

        // Where nothing is stated of a part, its usual share is not known either.
        return new ContentShare(part.Name, keys, place, new Amount(part.Low, part.Stated > 0 ? part.Typical : null, part.Stated), part.Most);
    }

    /// <summary>Adds the constituents of a part; gives the share of the whole that may be fragrance substances which none of them names.</summary>
    private static decimal AddConstituents(Ingredient ingredient, MaterialPartShare part, List<ContentShare> shares)
    {
        var stated = Stated(ingredient.Constituents);
        var named = stated.Sum(Least);
        foreach (var constituent in stated)
        {
            var room = Math.Max(0, 100 - (named - Least(constituent)));
            var exact = IsExact(constituent) ? constituent.Typical : null;
            var share = new Amount(
                part.Low * Least(constituent) / 100,
                part.Typical * (constituent.Typical ?? (constituent.Low + constituent.High) / 2 ?? constituent.Low ?? constituent.High) / 100,
                part.Stated * (constituent.High ?? constituent.Typical ?? constituent.Low ?? 0) / 100);
            shares.Add(new ContentShare(
                constituent.Substance, ContentKeys.Of(constituent.Substance, constituent.Cas), MatchedAs.Constituent, share, part.Most * (constituent.High ?? exact ?? room) / 100));
        }

        if (!MayHoldFragrance(ingredient))
        {
            return 0;
        }

        var water = ingredient.Properties.Where(p => p.Property == Property.WaterContent).Select(p => p.Least()).DefaultIfEmpty(0).Max();
        return part.Most * Math.Max(0, 100 - named - water - ingredient.Parts.Sum(p => p.Low ?? p.Typical ?? 0)) / 100;
    }

    /// <summary>One statement for each substance: the one marked as used, else the only one; citral once.</summary>
    private static List<Constituent> Stated(IReadOnlyList<Constituent> all)
    {
        var stated = all.GroupBy(c => c.Substance, StringComparer.Ordinal).Select(g => g.FirstOrDefault(c => c.Used) ?? g.First()).ToList();
        if (CitralHalves.All(half => stated.Exists(c => c.Cas == half)))
        {
            stated.RemoveAll(c => c.Cas == Citral);
        }

        return stated;
    }

    private static decimal Least(Constituent constituent) => constituent.Low ?? (IsExact(constituent) ? constituent.Typical : null) ?? 0;

    // A single analysis binds no other lot, unless it is of the maker's own.
    private static bool IsExact(Statement statement) => statement.Source == Own;

    /// <summary>Whether one name lists several ingredients, as makers write a ready-made blend, and nothing says how much of each; two names of a record are synonyms.</summary>
    private static bool IsMixtureOfUnknownParts(Ingredient ingredient) =>
        ingredient.Parts.Count == 0 && ingredient.Constituents.Count == 0
        && ingredient.Names.Any(n => n.Kind == NameKind.Inci && (n.Text.Contains("(and)", StringComparison.OrdinalIgnoreCase) || n.Text.Contains(';', StringComparison.Ordinal)));

    /// <summary>Whether fragrance substances may be in a material without anybody saying so: in what is volatile, or was analysed for single substances.</summary>
    private static bool MayHoldFragrance(Ingredient ingredient) =>
        (ingredient.Constituents.Any(c => c.Cas is not null) && ingredient.Kind is not IngredientKind.Wax)
        || ingredient.Kind is IngredientKind.EssentialOil or IngredientKind.Extract or IngredientKind.Hydrosol or IngredientKind.Resin;
}
