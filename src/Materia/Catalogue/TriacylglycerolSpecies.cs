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
            if (Chains(part) is not [var first, var middle, var last])
            {
                return null;
            }

            species.Add(string.CompareOrdinal(first, last) <= 0 ? first + middle + last : last + middle + first);
        }

        return species;
    }

    private static List<string>? Chains(string part)
    {
        var chains = new List<string>();
        for (var i = 0; i < part.Length; i += chains[^1].Length)
        {
            var length = i + 1 < part.Length && char.IsAsciiLetterLower(part[i + 1]) ? 2 : 1;
            var letter = part.Substring(i, length);
            if (!Letters.Contains(letter, StringComparer.Ordinal))
            {
                return null;
            }

            chains.Add(letter);
        }

        return chains;
    }
}
