namespace Materia.Catalogue;

/// <summary>The form of the short names of triacylglycerols; see <see cref="TriacylglycerolShare.Species"/>.</summary>
public static class TriacylglycerolSpecies
{
    /// <summary>Joins species whose shares the source prints as one sum.</summary>
    public const char Joint = '+';

    /// <summary>The letters of the chains, by length and then by double bonds.</summary>
    public static IReadOnlyList<string> Letters { get; } = ["Cy", "C", "La", "M", "P", "S", "A", "B", "Po", "O", "E", "L", "Ln"];

    /// <summary>
    /// The single species of a name: one for <c>SOS</c>, two for <c>SLO+OOO</c>. Each is spelt from the end that comes first in ordinal
    /// order, so that mirror images come out the same (<c>SOP</c> gives <c>POS</c>). <see langword="null"/> when a part is not three
    /// known letters.
    /// </summary>
    public static IReadOnlyList<string>? Parse(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var species = new List<string>();
        foreach (var part in name.Split(Joint))
        {
            if (Chains(part) is not var (first, middle, last))
            {
                return null;
            }

            species.Add(string.CompareOrdinal(first, last) <= 0 ? first + middle + last : last + middle + first);
        }

        return species;
    }

    /// <summary>The letters of the three chains of one species such as <c>LaMP</c>, in order; <see langword="null"/> when it is not three known ones.</summary>
    public static (string First, string Middle, string Last)? Chains(string species)
    {
        ArgumentNullException.ThrowIfNull(species);
        var chains = new List<string>(3);
        for (var i = 0; i < species.Length; i += chains[^1].Length)
        {
            var length = i + 1 < species.Length && char.IsAsciiLetterLower(species[i + 1]) ? 2 : 1;
            var letter = species.Substring(i, length);
            if (chains.Count == 3 || !Letters.Contains(letter, StringComparer.Ordinal))
            {
                return null;
            }

            chains.Add(letter);
        }

        return chains is [var first, var middle, var last] ? (first, middle, last) : null;
    }
}
