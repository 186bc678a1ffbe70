using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>The chain that a fatty acid of the reference table brings to a triacylglycerol.</summary>
public static class ChainOfAcid
{
    /// <summary>
    /// The chain of <paramref name="acid"/>. Hydroxyl, epoxy, ring and conjugated chains and chains with four or more double
    /// bonds have no melting data and become <see cref="ChainKind.Other"/>.
    /// </summary>
    public static Chain Of(FattyAcid acid)
    {
        var symbol = acid.Symbol;
        var special = acid.Hydroxyls > 0
            || symbol.Contains("ep", StringComparison.Ordinal)
            || symbol.Contains("conj", StringComparison.Ordinal)
            || symbol.StartsWith("cyc", StringComparison.Ordinal)
            || (symbol.Contains("11t", StringComparison.Ordinal) && symbol.Contains("13", StringComparison.Ordinal));
        var kind = special ? ChainKind.Other : acid.DoubleBonds switch
        {
            0 => ChainKind.Saturated,
            1 => symbol.EndsWith('t') ? ChainKind.TransMonoene : ChainKind.CisMonoene,
            2 => ChainKind.Diene,
            3 => ChainKind.Triene,
            _ => ChainKind.Other,
        };
        return new Chain(acid.Carbons, kind);
    }
}
