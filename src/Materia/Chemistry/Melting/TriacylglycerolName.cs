using System.Globalization;
using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>The field's short names of triacylglycerols, such as <c>SOS</c>: one letter or two for each chain, in the order of the positions.</summary>
public static class TriacylglycerolName
{
    // One for each of the catalogue's letters, which a test holds.
    private static readonly Dictionary<string, Chain> Letters = new(StringComparer.Ordinal)
    {
        ["Cy"] = new(8, ChainKind.Saturated),
        ["C"] = new(10, ChainKind.Saturated),
        ["La"] = new(12, ChainKind.Saturated),
        ["M"] = new(14, ChainKind.Saturated),
        ["P"] = new(16, ChainKind.Saturated),
        ["S"] = new(18, ChainKind.Saturated),
        ["A"] = new(20, ChainKind.Saturated),
        ["B"] = new(22, ChainKind.Saturated),
        ["Po"] = new(16, ChainKind.CisMonoene),
        ["O"] = new(18, ChainKind.CisMonoene),
        ["E"] = new(18, ChainKind.TransMonoene),
        ["L"] = new(18, ChainKind.Diene),
        ["Ln"] = new(18, ChainKind.Triene),
    };

    private static readonly Dictionary<Chain, string> ByChain = Letters.ToDictionary(p => p.Value, p => p.Key);

    /// <summary>The name of <paramref name="fat"/>; chains without a letter are written as carbons and double bonds in brackets.</summary>
    public static string Of(Triacylglycerol fat) => Letter(fat.Sn1) + Letter(fat.Sn2) + Letter(fat.Sn3);

    /// <summary>Reads a name such as <c>POS</c> or <c>LaMP</c>; <see langword="null"/> when it is not three known letters.</summary>
    public static Triacylglycerol? Parse(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return TriacylglycerolSpecies.Chains(name) is { } letters ? new Triacylglycerol(Letters[letters.First], Letters[letters.Middle], Letters[letters.Last]) : null;
    }

    private static string Letter(Chain chain)
    {
        if (ByChain.TryGetValue(chain, out var letter))
        {
            return letter;
        }

        var mark = chain.Kind switch
        {
            ChainKind.Other => "?",
            ChainKind.TransMonoene => "1t",
            _ => chain.DoubleBonds.ToString(CultureInfo.InvariantCulture),
        };
        return string.Create(CultureInfo.InvariantCulture, $"({chain.Carbons}:{mark})");
    }
}
