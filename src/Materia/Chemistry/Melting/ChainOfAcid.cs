using Materia.Catalogue;
using Materia.Chemistry.Materials;

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
        var special = acid.Hydroxyls > 0 || AcidTraits.IsEpoxy(acid) || AcidTraits.HasRing(acid) || AcidTraits.IsConjugated(acid);
        var kind = special ? ChainKind.Other : acid.DoubleBonds switch
        {
            0 => ChainKind.Saturated,
            1 => acid.Symbol.EndsWith('t') ? ChainKind.TransMonoene : ChainKind.CisMonoene,
            2 => ChainKind.Diene,
            3 => ChainKind.Triene,
            _ => ChainKind.Other,
        };
        return new Chain(acid.Carbons, kind);
    }
}
