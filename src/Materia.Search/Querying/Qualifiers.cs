using System.Collections.Frozen;
using Materia.Search.Analysis;

namespace Materia.Search.Querying;

/// <summary>
/// Words that people type beside a name and that say how the material was made, what it looks like or where to buy it, never what
/// it is. They are left out only when nothing is found with them: <c>refined</c>, <c>virgin</c> or <c>powder</c> are words of some names.
/// </summary>
internal static class Qualifiers
{
    private static readonly FrozenSet<string> Words = FrozenSet.Create(
        StringComparer.Ordinal,
        // what stands between words
        "of", "the", "and", "for", "with", "in", "from", "de", "du", "des", "von", "di", "van",
        // how it was grown, got and cleaned
        "organic", "bio", "biologique", "biologico", "biologica", "organico", "organica", "ecologico", "natural", "naturel", "pure", "puro", "pura", "pur", "100",
        "raw", "brut", "cru", "roh", "crudo", "cruda", "unrefined", "refined", "raffine", "raffiniert", "refinado", "refinada", "raffinato", "deodorised", "deodorized", "unscented",
        "virgin", "vierge", "nativ", "virgen", "vergine", "virgem", "extra", "cold", "pressed", "coldpressed", "expeller", "hexane", "free", "kaltgepresst",
        "essential", "undiluted", "genuine", "real", "fresh", "wild", "fair", "trade", "fairtrade", "vegan", "handmade", "traditional", "golden", "vegetable",
        // its grade
        "cosmetic", "food", "pharmaceutical", "usp", "bp", "grade", "premium", "quality", "high", "best",
        // what it looks like
        "powder", "powdered", "poudre", "pulver", "polvo", "polvere", "pellets", "pellet", "pastilles", "beads", "flakes", "granules", "crystals", "liquid", "solid", "bulk", "white", "yellow",
        // where and what for
        "uk", "us", "usa", "eu", "buy", "online", "hair", "skin", "soap", "making", "diy", "cosmetics", "skincare", "haircare");

    // Short words for what names spell out.
    private static readonly FrozenDictionary<string, string> Written = new Dictionary<string, string>(StringComparer.Ordinal) { ["eo"] = "oil", ["vit"] = "vitamin" }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The text without such words; <see langword="null"/> where it has none or nothing is left.</summary>
    public static TextQuery? Without(TextQuery query) => Changed(query, [.. query.Words.Where(w => !Words.Contains(w.Plain))]);

    /// <summary>The text with shortened words written out, <c>eo</c> as <c>oil</c>; <see langword="null"/> where it has none.</summary>
    public static TextQuery? WrittenOut(TextQuery query) => Changed(query, [.. query.Words.Select(w => Written.TryGetValue(w.Plain, out var full) ? new Word(full) : w)]);

    private static TextQuery? Changed(TextQuery query, Word[] words) =>
        words.Length == 0 || words.SequenceEqual(query.Words) ? null : TextQuery.Of(words);
}
