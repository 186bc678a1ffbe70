using Materia.Catalogue;

namespace Materia.Regulation.Contents;

/// <summary>Works out what a material consists of.</summary>
internal static class ContentReading
{
    // Composites of composites are few; a deeper chain would be a loop, which the seed check refuses.
    private const int DeepestPart = 8;

    private const string Own = "own";
    private const string Citral = "5392-40-5";

    // The two halves of citral; where both are stated the sum is not counted again.
    private static readonly string[] CitralHalves = ["106-26-3", "141-27-5"];

    /// <summary>Reads a material with its parts.</summary>
    public static IngredientContents Read(Ingredient ingredient, Release release)
    {
        var shares = new List<ContentShare>();
        var unaccounted = Add(ingredient, new Amount(100, 100, 100), release, shares, 0, out var isUnknown);
        return new IngredientContents(shares, unaccounted, isUnknown);
    }

    /// <summary>Adds a material and what is in it; gives the share that may be unnamed fragrance substances.</summary>
    private static decimal Add(Ingredient ingredient, Amount share, Release release, List<ContentShare> shares, int depth, out bool isUnknown)
    {
        var inciNames = ingredient.Names.Where(n => n.Kind == NameKind.Inci).Select(n => n.Text.ToUpperInvariant()).ToList();
        isUnknown = inciNames.Exists(NamesSeveral) && ingredient.Parts.Count == 0 && ingredient.Constituents.Count == 0;
        shares.Add(new ContentShare(
            ingredient.CommonName(),
            ingredient.Parts.Count > 0 ? [] : [.. ingredient.Numbers.Where(n => n.Registry == Registry.Cas).Select(n => n.Number)],
            ingredient.Parts.Count > 0 ? [] : inciNames,
            ingredient.Id,
            share));
        decimal unaccounted = 0;
        for (var i = 0; i < ingredient.Parts.Count && depth < DeepestPart; i++)
        {
            var part = ingredient.Parts[i];
            var inner = share.Of(ShareOf(part.Low, part.Typical, part.High, Room(ingredient.Parts, i), IsExact(part)));
            if (part.Ingredient is { } id && release.FindIngredient(id) is { } known)
            {
                unaccounted += Add(known, inner, release, shares, depth + 1, out var partIsUnknown);
                isUnknown |= partIsUnknown;
            }
            else
            {
                shares.Add(new ContentShare(part.InciName, part.Cas is { } cas ? [cas] : [], [part.InciName.ToUpperInvariant()], part.Ingredient, inner));
            }
        }

        return unaccounted + AddConstituents(ingredient, share, shares);
    }

    private static decimal AddConstituents(Ingredient ingredient, Amount share, List<ContentShare> shares)
    {
        if (!MayHoldFragrance(ingredient))
        {
            return 0;
        }

        var stated = Stated(ingredient.Constituents);
        var named = stated.Sum(c => Least(c));
        foreach (var constituent in stated)
        {
            var room = Math.Max(0, 100 - (named - Least(constituent)));
            var inner = ShareOf(constituent.Low, constituent.Typical, constituent.High, room, IsExact(constituent));
            shares.Add(new ContentShare(constituent.Substance, constituent.Cas is { } cas ? [cas] : [], [constituent.Substance.ToUpperInvariant()], null, share.Of(inner)));
        }

        var water = ingredient.Properties.Where(p => p.Property == Property.WaterContent).Select(p => p.Least()).DefaultIfEmpty(0).Max();
        return share.High * Math.Max(0, 100 - named - water - ingredient.Parts.Sum(p => p.Low ?? p.Typical ?? 0)) / 100;
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

    /// <summary>
    /// The share of a substance in its material. Without an upper end it may fill whatever the others leave; a single analysis binds
    /// no other lot, unless it is the maker's own lot.
    /// </summary>
    private static Amount ShareOf(decimal? low, decimal? typical, decimal? high, decimal room, bool isExact) => new(
        low ?? (isExact ? typical : null) ?? 0,
        typical ?? (low + high) / 2,
        high ?? (isExact ? typical : null) ?? room);

    private static decimal Least(Constituent constituent) => constituent.Low ?? (IsExact(constituent) ? constituent.Typical : null) ?? 0;

    private static decimal Room(IReadOnlyList<CompositePart> parts, int place) =>
        Math.Max(0, 100 - parts.Where((_, i) => i != place).Sum(p => p.Low ?? (IsExact(p) ? p.Typical : null) ?? 0));

    private static bool IsExact(Statement statement) => statement.Source == Own;

    /// <summary>Whether a name lists several ingredients, as makers write a ready-made blend; two names of a record are synonyms.</summary>
    private static bool NamesSeveral(string inciName) => inciName.Contains("(AND)", StringComparison.Ordinal) || inciName.Contains(';', StringComparison.Ordinal);

    /// <summary>Whether fragrance substances may be in a material without anybody saying so.</summary>
    private static bool MayHoldFragrance(Ingredient ingredient) =>
        ingredient.Constituents.Any(c => c.Cas is not null) && ingredient.Kind is not IngredientKind.Wax
        || ingredient.Kind is IngredientKind.EssentialOil or IngredientKind.Extract or IngredientKind.Hydrosol or IngredientKind.Resin;
}
