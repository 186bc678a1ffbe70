namespace Materia.Chemistry.Melting;

/// <summary>A pure species with what the equilibrium needs of it. Equal species of different ingredients are one species of a blend.</summary>
/// <param name="Name">A short name, such as <c>SOS</c> or <c>cetyl alcohol</c>; equal names are the same species.</param>
/// <param name="Class">The class it crystallises in.</param>
/// <param name="MolarMass">Molar mass [g/mol].</param>
/// <param name="MeltingPoint">Melting point of the pure species in the form of its class [Cel], without the class's shift.</param>
/// <param name="EnthalpyOfFusion">Enthalpy of fusion in that form [kJ/mol].</param>
/// <param name="Source">Where the two come from: a source key or a method key.</param>
public sealed record PureSpecies(string Name, CrystalClass Class, double MolarMass, double MeltingPoint, double EnthalpyOfFusion, string Source)
{
    /// <summary>The species of a triacylglycerol, measured where a measured melting point is held, else from the correlation.</summary>
    public static PureSpecies Of(Triacylglycerol fat)
    {
        var @class = CrystalClasses.Of(fat);
        var name = TriacylglycerolName.Of(fat);
        if (@class == CrystalClass.Liquid)
        {
            return new(name, @class, fat.MolarMass, double.NaN, 0, "counted-as-liquid");
        }

        var form = ClassTable.Of(@class).Form;
        var enthalpy = WesdorpCorrelation.EnthalpyOfFusion(fat, form);
        return form == Polymorph.Beta && MeasuredTriacylglycerols.BetaMeltingPoint(fat) is { } measured
            ? new(name, @class, fat.MolarMass, measured.Celsius, enthalpy, measured.Source)
            : new(name, @class, fat.MolarMass, WesdorpCorrelation.MeltingPoint(fat, form), enthalpy, "wesdorp-1990");
    }
}
