namespace Materia.Chemistry.Rules;

/// <summary>
/// How readily the fatty acids of an oil oxidise, by the relative rates of the acids with one, two and three double bonds, 1 : 10.3 : 21.6.
/// Source: <c>fatemi-hammond-1980</c> (the rates are recalled; the paper was not reached). An index: it explains about half of the spread of
/// measured stabilities, the rest being antioxidants, metals, peroxides and refining.
/// </summary>
public static class CoxIndex
{
    /// <summary>The weight of an acid: 0, 1, 10.3 or 21.6 by its double bonds; four and more count as three [1].</summary>
    /// <param name="doubleBonds">Carbon-carbon double bonds [1].</param>
    public static double Weight(int doubleBonds) => doubleBonds switch
    {
        <= 0 => 0,
        1 => 1,
        2 => 10.3,
        _ => 21.6,
    };
}
