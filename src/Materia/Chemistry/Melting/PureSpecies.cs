namespace Materia.Chemistry.Melting;

/// <summary>A pure species with what the equilibrium needs of it. Equal species of different ingredients are one species of a blend.</summary>
/// <param name="Name">A short name, such as <c>SOS</c> or <c>cetyl alcohol</c>; equal names are the same species.</param>
/// <param name="Class">The class it crystallises in.</param>
/// <param name="MolarMass">Molar mass [g/mol].</param>
/// <param name="MeltingPoint">Melting point of the pure species in the form of its class [Cel], without the class's shift.</param>
/// <param name="EnthalpyOfFusion">Enthalpy of fusion in that form [kJ/mol].</param>
/// <param name="MeltingSeen">Where the melting point comes from.</param>
/// <param name="EnthalpySeen">Where the enthalpy of fusion comes from.</param>
public sealed record PureSpecies(string Name, CrystalClass Class, double MolarMass, double MeltingPoint, double EnthalpyOfFusion, Seen MeltingSeen, Seen EnthalpySeen)
{
    /// <summary>The correlation's coefficients were seen in two transcriptions, not in the work itself.</summary>
    private static readonly Seen Correlation = new("wesdorp-1990", Catalogue.Evidence.Secondary);

    /// <summary>A species that counts as liquid at every temperature looked at.</summary>
    /// <param name="name">A short name.</param>
    /// <param name="molarMass">Molar mass [g/mol].</param>
    public static PureSpecies Liquid(string name, double molarMass) => new(name, CrystalClass.Liquid, molarMass, double.NaN, 0, Seen.InModel, Seen.InModel);

    /// <summary>ln K at a temperature [K], from the melting point moved by a shift [K].</summary>
    public double LogKAt(double kelvin, double shift = 0) =>
        1000 * EnthalpyOfFusion / SpeciesSystem.GasConstant * ((1 / kelvin) - (1 / (MeltingPoint + shift + 273.15)));

    /// <summary>The species of a triacylglycerol, measured where a measured melting point is held, else from the correlation.</summary>
    public static PureSpecies Of(Triacylglycerol fat)
    {
        var @class = CrystalClasses.Of(fat);
        var name = TriacylglycerolName.Of(fat);
        if (@class == CrystalClass.Liquid)
        {
            return Liquid(name, fat.MolarMass);
        }

        var form = ClassTable.Of(@class).Form;
        var enthalpy = WesdorpCorrelation.EnthalpyOfFusion(fat, form);
        return form == Polymorph.Beta && MeasuredTriacylglycerols.BetaMeltingPoint(fat) is { } measured
            ? new(name, @class, fat.MolarMass, measured.Celsius, enthalpy, measured.Seen, Correlation)
            : new(name, @class, fat.MolarMass, WesdorpCorrelation.MeltingPoint(fat, form), enthalpy, Correlation, Correlation);
    }
}
