namespace Materia.Chemistry;

/// <summary>The saponification value of a blend's lipid phase: the mass of potassium hydroxide that saponifies and neutralises it [mg/g].</summary>
public static class SaponificationValue
{
    /// <summary>Works out the saponification value per gram of the blend's lipid phase (butters, oils, waxes, fatty alcohols and acids, esters, hydrocarbons).</summary>
    public static ComputedFigure Of(Blend blend) => throw new NotImplementedException();

    /// <summary>The same demand in sodium hydroxide, 39.997/56.106 of the potassium hydroxide [mg/g].</summary>
    public static ComputedFigure InSodiumHydroxide(ComputedFigure saponificationValue) => throw new NotImplementedException();
}
