using Materia.Search.Indexing;

namespace Materia.Search.Querying;

/// <summary>Ranks matches of names: one number for each, the smaller the better, and no two ingredients with the same.</summary>
/// <remarks>
/// Compared in turn: how the words match (<see cref="Tier"/>), how many typing errors, whether the name begins with the text (for
/// unfinished words only), the name's length less a letter for each language in which the ingredient has names (not where the
/// text is the whole name or unfinished), the name's kind, how many names the ingredient has (the most first, as it is the better known), the ingredient's id.
/// </remarks>
internal static class NameOrder
{
    private const int LongestName = (1 << 10) - 1;
    private const int MostErrors = (1 << 6) - 1;
    private const int MostLanguages = (1 << 4) - 1;
    private const int MostSiblings = (1 << 6) - 1;
    private const int SiblingsPlace = 24;
    private const int KindPlace = 30;
    private const int LengthPlace = 34;
    private const int BeginsPlace = 44;
    private const int ErrorsPlace = 45;
    private const int TierPlace = 51;

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

        /// <summary>All words stand in one name by their sound or but for the first letter.</summary>
        Sound,

        /// <summary>All words stand in names of the ingredient by their sound or but for the first letter.</summary>
        SoundAcross,
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

        var tier = worst switch { Grade.Exact => Tier.Exact, Grade.Prefix => Tier.Prefix, < Grade.Sound => Tier.Fuzzy, _ => Tier.Sound };
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

        var tier = worst switch { Grade.Exact => Tier.ExactAcross, Grade.Prefix => Tier.PrefixAcross, < Grade.Sound => Tier.FuzzyAcross, _ => Tier.SoundAcross };
        return Pack(tier, errors, true, first);
    }

    /// <summary>The tier of a rank.</summary>
    public static Tier TierOf(long rank) => (Tier)(rank >> TierPlace);

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
    public static long ToShow(long rank) =>
        (rank >> BeginsPlace << 14) | ((rank >> KindPlace & 0xF) << 10) | (rank >> LengthPlace & LongestName);

    // 4 bits of tier, 6 of errors, 1, 10 of length, 4 of kind, 6 of the number of names, 24 of ordinal, which is the order of the ids.
    private static long Pack(Tier tier, int errors, bool begins, IndexedName name)
    {
        // Of a word that many names share the better-known ingredient is meant; of a beginning, any name that begins so.
        var languages = tier is Tier.Prefix or Tier.PrefixAcross ? 0 : Math.Min(name.Languages, MostLanguages);
        var length = Math.Min(name.Key.Length + MostLanguages - languages, LongestName);
        return ((long)tier << TierPlace)
            | ((long)Math.Min(errors, MostErrors) << ErrorsPlace)
            | ((begins ? 0L : 1L) << BeginsPlace)
            | ((long)(tier == Tier.Whole ? 0 : length) << LengthPlace)
            | ((long)name.Kind << KindPlace)
            | ((long)(MostSiblings - Math.Min(name.Siblings, MostSiblings)) << SiblingsPlace)
            | (uint)name.Ingredient;
    }
}
