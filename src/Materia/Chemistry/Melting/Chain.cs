namespace Materia.Chemistry.Melting;

/// <summary>An acyl chain as the melting correlation sees it: its length and the sort of its double bonds.</summary>
/// <param name="Carbons">Carbon atoms.</param>
/// <param name="Kind">Saturated, or the sort of unsaturation.</param>
public readonly record struct Chain(int Carbons, ChainKind Kind)
{
    /// <summary>True when the chain has no double bond.</summary>
    public bool IsSaturated => Kind == ChainKind.Saturated;

    /// <summary>Double bonds of the chain.</summary>
    public int DoubleBonds => Kind switch
    {
        ChainKind.Saturated => 0,
        ChainKind.CisMonoene or ChainKind.TransMonoene => 1,
        ChainKind.Diene => 2,
        _ => 3,
    };

    /// <summary>Molar mass of the free acid [g/mol], from standard atomic masses.</summary>
    public double AcidMolarMass => (12.011 * Carbons) + (1.008 * ((2 * Carbons) - (2 * DoubleBonds))) + 31.998;
}

/// <summary>Sorts of acyl chain that the correlation tells apart.</summary>
public enum ChainKind
{
    /// <summary>No double bond.</summary>
    Saturated,

    /// <summary>One cis double bond (O, as in oleic).</summary>
    CisMonoene,

    /// <summary>One trans double bond (E, as in elaidic).</summary>
    TransMonoene,

    /// <summary>Two double bonds (J, as in linoleic).</summary>
    Diene,

    /// <summary>Three double bonds (N, as in linolenic).</summary>
    Triene,

    /// <summary>Hydroxyl, epoxy, ring or conjugated chains and chains with four or more double bonds: no melting data, counted as liquid.</summary>
    Other,
}
