namespace Materia.Chemistry.Melting;

/// <summary>A triacylglycerol by its chains and their positions; mirror images are one species.</summary>
public readonly record struct Triacylglycerol
{
    /// <summary>Puts the chains in their places; the outer two are ordered, so that mirror images compare equal.</summary>
    public Triacylglycerol(Chain outer, Chain middle, Chain otherOuter)
    {
        var swap = (outer.Carbons, (int)outer.Kind).CompareTo((otherOuter.Carbons, (int)otherOuter.Kind)) > 0;
        Sn1 = swap ? otherOuter : outer;
        Sn2 = middle;
        Sn3 = swap ? outer : otherOuter;
    }

    /// <summary>The outer chain that comes first in order.</summary>
    public Chain Sn1 { get; }

    /// <summary>The middle chain.</summary>
    public Chain Sn2 { get; }

    /// <summary>The other outer chain.</summary>
    public Chain Sn3 { get; }

    /// <summary>Molar mass [g/mol]: glycerol and three acids less three waters.</summary>
    public double MolarMass => 92.094 + Sn1.AcidMolarMass + Sn2.AcidMolarMass + Sn3.AcidMolarMass - (3 * 18.015);

    /// <summary>False when a chain has no melting data; such a fat counts as liquid.</summary>
    public bool HasMeltingData => Sn1.Kind != ChainKind.Other && Sn2.Kind != ChainKind.Other && Sn3.Kind != ChainKind.Other;

    /// <summary>Chains that have a double bond, 0 to 3.</summary>
    public int UnsaturatedChains => (Sn1.IsSaturated ? 0 : 1) + (Sn2.IsSaturated ? 0 : 1) + (Sn3.IsSaturated ? 0 : 1);
}
