using Materia.Search.Indexing;

namespace Materia.Search.Querying;

/// <summary>Ranks matches of names: one number for each, the smaller the better, and no two ingredients with the same.</summary>
/// <remarks>
/// Compared in turn: how the words match (<see cref="Tier"/>), how many typing errors, whether the name begins with the text (for
/// unfinished words only), the name's length, its kind, the ingredient's id.
/// </remarks>
internal static class NameOrder
{
    private const int LongestName = (1 << 10) - 1;

    /// <summary>How the words of the text match, from best to least.</summary>
    public enum Tier
    {
        /// <summary>The text is the whole name.</summary>
        Whole,

        /// <summary>All words stand in one name.</summary>
        Exact,

        /// <summary>All words stand in one name, the last unfinished.</summary>
        Prefix,

        /// <summary>All words stand in names of the ingredient.</summary>
        ExactAcross,

        /// <summary>All words stand in names of the ingredient, the last unfinished.</summary>
        PrefixAcross,

        /// <summary>All words stand in one name when typing errors are forgiven.</summary>
        Fuzzy,

        /// <summary>All words stand in names of the ingredient when typing errors are forgiven.</summary>
        FuzzyAcross,
    }

    /// <summary>The rank of a match in one name, or <see langword="null"/> where a word is missing from it.</summary>
    public static long? OfName(IndexedName name, int document, TextQuery query, Grades grades)
    {
        if (grades.Whole[document] != Grade.None)
        {
            return Pack(Tier.Whole, 0, true, name);
        }

        var (worst, errors) = (Grade.Exact, 0);
        foreach (var ofWord in grades.Words)
        {
            var grade = ofWord[document];
            if (grade == Grade.None)
            {
                return null;
            }

            worst = Math.Max(worst, grade);
            errors += grade - Grade.Exact;
        }

        var tier = worst switch { Grade.Exact => Tier.Exact, Grade.Prefix => Tier.Prefix, _ => Tier.Fuzzy };
        var begins = tier != Tier.Prefix || name.Key.StartsWith(query.Whole.Plain, StringComparison.Ordinal);
        return Pack(tier, errors, begins, name);
    }

    /// <summary>The rank of a match across names, from the best grade of each word; <paramref name="first"/> is the ingredient's first name.</summary>
    public static long Across(IndexedName first, ReadOnlySpan<byte> best)
    {
        var (worst, errors) = (Grade.Exact, 0);
        foreach (var grade in best)
        {
            worst = Math.Max(worst, grade);
            errors += grade - Grade.Exact;
        }

        var tier = worst switch { Grade.Exact => Tier.ExactAcross, Grade.Prefix => Tier.PrefixAcross, _ => Tier.FuzzyAcross };
        return Pack(tier, errors, true, first);
    }

    /// <summary>The tier of a rank.</summary>
    public static Tier TierOf(long rank) => (Tier)(rank >> 45);

    /// <summary>How the text matched, as results say it.</summary>
    public static MatchDegree DegreeOf(long rank) => TierOf(rank) switch
    {
        Tier.Whole or Tier.Exact or Tier.ExactAcross => MatchDegree.Exact,
        Tier.Prefix or Tier.PrefixAcross => MatchDegree.Prefix,
        _ => MatchDegree.Fuzzy,
    };

    /// <summary>
    /// The rank for choosing which of an ingredient's equally good names to show: there the kind goes before the length, so that
    /// "sh" is completed to the common name rather than to a shorter synonym.
    /// </summary>
    public static long ToShow(long rank) => (rank >> 38 << 14) | ((rank >> 24 & 0xF) << 10) | (rank >> 28 & LongestName);

    // 3 bits of tier, 6 of errors (twelve words, three at most each), 1, 10 of length, 4 of kind, 24 of ordinal, which is the
    // order of the ids.
    private static long Pack(Tier tier, int errors, bool begins, IndexedName name) =>
        ((long)tier << 45)
        | ((long)errors << 39)
        | ((begins ? 0L : 1L) << 38)
        | ((long)Math.Min(name.Key.Length, LongestName) << 28)
        | ((long)name.Kind << 24)
        | (uint)name.Ingredient;
}
