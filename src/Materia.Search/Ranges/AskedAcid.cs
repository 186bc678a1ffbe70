using System.Collections.Frozen;
using System.Globalization;
using Materia.Catalogue;

namespace Materia.Search.Ranges;

/// <summary>A fatty acid that a search asks for, with the symbols that stand for the same molecular formula and chain.</summary>
/// <param name="Symbol">The symbol asked for.</param>
/// <param name="IsTotal">True for an undifferentiated symbol such as <c>18:1</c>.</param>
/// <param name="Total">The undifferentiated symbol that an isomer such as <c>18:1n-9</c> is part of.</param>
/// <param name="Isomers">The isomers under that total, the symbol asked for included when it is one.</param>
internal sealed record AskedAcid(string Symbol, bool IsTotal, string? Total, FrozenSet<string> Isomers)
{
    /// <summary>Resolves a symbol against the table of fatty acids; <see langword="null"/> when neither it nor an isomer of it is there.</summary>
    public static AskedAcid? Find(Release release, string symbol)
    {
        var known = release.FindFattyAcid(symbol);
        if (ChainOf(symbol) is not { } chain)
        {
            return known is null ? null : new AskedAcid(symbol, false, null, []);
        }

        var isomers = release.Content.FattyAcids
            .Where(a => a.Symbol != chain.Text && IsIsomer(a, chain))
            .Select(a => a.Symbol)
            .ToFrozenSet(StringComparer.Ordinal);
        var isTotal = symbol == chain.Text;
        if (known is null && !(isTotal && isomers.Count > 0))
        {
            return null;
        }

        return isTotal || isomers.Contains(symbol)
            ? new AskedAcid(symbol, isTotal, isTotal ? null : chain.Text, isomers)
            : new AskedAcid(symbol, false, null, []);
    }

    // "18:1" of "18:1n-9"; none of "cyc-19:1".
    private static (string Text, int Carbons, int DoubleBonds)? ChainOf(string symbol)
    {
        var colon = symbol.IndexOf(':', StringComparison.Ordinal);
        var end = colon + 1;
        while (colon > 0 && end < symbol.Length && char.IsAsciiDigit(symbol[end]))
        {
            end++;
        }

        return colon > 0
            && int.TryParse(symbol.AsSpan(0, colon), NumberStyles.None, CultureInfo.InvariantCulture, out var carbons)
            && int.TryParse(symbol.AsSpan(colon + 1, end - colon - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var doubleBonds)
            ? (symbol[..end], carbons, doubleBonds)
            : null;
    }

    // The molar mass tells isomers from hydroxy and epoxy acids and from alcohols, whose symbols begin alike; a tenth of a
    // gram per mole covers the rounding of tabulated masses, and the nearest other formula is 2 g/mol away.
    private static bool IsIsomer(FattyAcid acid, (string Text, int Carbons, int DoubleBonds) chain)
    {
        var mass = (12.011m * chain.Carbons) + (1.008m * 2 * (chain.Carbons - chain.DoubleBonds)) + (15.999m * 2);
        return acid.Symbol.StartsWith(chain.Text, StringComparison.Ordinal)
            && !char.IsAsciiDigit(acid.Symbol[chain.Text.Length])
            && !acid.Alcohol
            && Math.Abs(acid.MolarMass - mass) < 0.1m;
    }
}
