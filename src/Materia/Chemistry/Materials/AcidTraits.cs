using System.Globalization;
using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>What the symbol of a fatty acid says of its structure beyond the table's columns.</summary>
internal static class AcidTraits
{
    /// <summary>Carbons and double bonds, such as <c>18:1</c>; an alcohol and an acid with a substituent or ring keep their own symbol.</summary>
    public static string Chain(FattyAcid acid) =>
        acid.Alcohol || acid.Hydroxyls > 0 || IsEpoxy(acid) || HasRing(acid)
            ? acid.Symbol
            : string.Create(CultureInfo.InvariantCulture, $"{acid.Carbons}:{acid.DoubleBonds}");

    /// <summary>True for an acid with an epoxide, such as <c>18:1-12,13ep</c>.</summary>
    public static bool IsEpoxy(FattyAcid acid) => acid.Symbol.EndsWith("ep", StringComparison.Ordinal);

    /// <summary>True for a cyclopropenoid acid, such as <c>cyc-19:1</c>.</summary>
    public static bool HasRing(FattyAcid acid) => acid.Symbol.StartsWith("cyc-", StringComparison.Ordinal);

    /// <summary>
    /// True when two double bonds are neighbours: the symbol ends in <c>-conj</c>, or names positions two apart, such as
    /// <c>18:3-9c11t13c</c>.
    /// </summary>
    public static bool IsConjugated(FattyAcid acid)
    {
        var dash = acid.Symbol.IndexOf('-', StringComparison.Ordinal);
        if (acid.DoubleBonds < 2 || dash < 0)
        {
            return false;
        }

        if (acid.Symbol.EndsWith("-conj", StringComparison.Ordinal))
        {
            return true;
        }

        var position = 0;
        var previous = 0;
        foreach (var c in acid.Symbol.AsSpan(dash + 1))
        {
            if (char.IsAsciiDigit(c))
            {
                position = (position * 10) + (c - '0');
            }
            else if (c is 'c' or 't' && position > 0)
            {
                if (previous > 0 && position - previous == 2)
                {
                    return true;
                }

                (previous, position) = (position, 0);
            }
            else
            {
                return false;
            }
        }

        return false;
    }
}
