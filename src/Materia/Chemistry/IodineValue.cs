using Materia.Catalogue;

namespace Materia.Chemistry;

/// <summary>
/// The iodine value of a blend's lipid phase: the mass of iodine that its double bonds take up [g/(100.g)]. The quantity is one of fats,
/// so it is given for 100 g of the lipid phase (butters, oils, waxes, fatty alcohols and acids, esters, hydrocarbons); clays, powders,
/// starches and essential oils are outside it.
/// </summary>
public static class IodineValue
{
    /// <summary>The key of the method.</summary>
    public const string Method = "iodine-value";

    /// <summary>
    /// Works out the iodine value: IV = Σ w·IV_i / Σ w. Each ingredient's own comes from its fatty acids where that is valid, else from
    /// a stored measurement. Absent when under half of the lipid phase has one.
    /// </summary>
    public static ComputedFigure Of(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return TitrationBlend.Of(blend, static m => m.Iodine, Method, "iodine value", "IV", Units.GramPerHundredGram);
    }
}
