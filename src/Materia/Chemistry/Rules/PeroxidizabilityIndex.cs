namespace Materia.Chemistry.Rules;

/// <summary>
/// The index for highly unsaturated oils: 0.025 mono + 1 di + 2 tri + 4 tetra + 6 penta + 8 hexa, in percent of the acids.
/// Source: <c>cosgrove-1987</c> (weights recalled; the paper was not reached).
/// </summary>
public static class PeroxidizabilityIndex
{
    /// <summary>The weight of an acid by its double bonds; more than six count as six [1].</summary>
    /// <param name="doubleBonds">Carbon-carbon double bonds [1].</param>
    public static double Weight(int doubleBonds) => doubleBonds switch
    {
        <= 0 => 0,
        1 => 0.025,
        2 => 1,
        3 => 2,
        4 => 4,
        5 => 6,
        _ => 8,
    };
}
