using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Heating;

/// <summary>A vessel with so much in it: its surface, depth and wall.</summary>
/// <param name="Vessel">The vessel.</param>
/// <param name="Volume">Volume of the filling [m3].</param>
internal sealed record FilledVessel(Vessel Vessel, double Volume)
{
    /// <summary>Width of the filling: V = π/4 d² (s d) [m].</summary>
    public double Width => Math.Cbrt(4 * Volume / (Math.PI * Vessel.Slenderness));

    /// <summary>Depth of the filling [m].</summary>
    public double Depth => Vessel.Slenderness * Width;

    /// <summary>Bottom and side [m2].</summary>
    public double WallArea => Math.PI * Width * ((Width / 4) + Depth);

    /// <summary>All of the surface, the open top included [m2].</summary>
    public double Area => WallArea + (Math.PI * Width * Width / 4);

    /// <summary>Heat capacity of the wall [J/K].</summary>
    public double WallCapacity => 1000 * WallArea * Vessel.WallMass * Vessel.WallHeat;

    /// <summary>What passes through the surface for each kelvin [W/K].</summary>
    public double Conductance(double coefficient) => Area / ((1 / coefficient) + Vessel.WallResistance);

    /// <summary>The Biot number for a surface coefficient [1].</summary>
    public double Biot(double coefficient) => NewtonCooling.Biot(coefficient, Volume, Area, Surroundings.FatConductivity.Value);
}
