namespace Materia.Chemistry;

/// <summary>The iodine value of a blend's lipid phase: the mass of iodine that its double bonds take up [g/(100.g)].</summary>
public static class IodineValue
{
    /// <summary>Works out the iodine value per 100 g of the blend's lipid phase (butters, oils, waxes, fatty alcohols and acids, esters, hydrocarbons).</summary>
    public static ComputedFigure Of(Blend blend) => throw new NotImplementedException();
}
