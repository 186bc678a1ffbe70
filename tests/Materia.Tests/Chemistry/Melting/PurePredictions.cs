using Materia.Chemistry.Melting;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>What the model holds of the pure substances that printed rows name.</summary>
internal static class PurePredictions
{
    private static readonly Dictionary<string, (int Carbons, bool IsAlcohol)> FreeNames = new(StringComparer.Ordinal)
    {
        ["1-dodecanol"] = (12, true),
        ["1-tetradecanol"] = (14, true),
        ["1-hexadecanol"] = (16, true),
        ["1-octadecanol"] = (18, true),
        ["1-eicosanol"] = (20, true),
        ["1-docosanol"] = (22, true),
        ["decanoic acid"] = (10, false),
        ["dodecanoic acid"] = (12, false),
        ["tetradecanoic acid"] = (14, false),
        ["hexadecanoic acid"] = (16, false),
        ["octadecanoic acid"] = (18, false),
        ["eicosanoic acid"] = (20, false),
        ["docosanoic acid"] = (22, false),
        ["palmitic acid"] = (16, false),
        ["stearic acid"] = (18, false),
    };

    /// <summary>The figure for a row on a pure triacylglycerol, alcohol or acid; <see langword="null"/> for other rows and for crystal forms that the model does not have.</summary>
    public static double? Find(MeltingRow row)
    {
        if (FreeNames.TryGetValue(row.System, out var free))
        {
            var pure = free.IsAlcohol ? FreeChains.Alcohol(MeltingFats.Saturated(free.Carbons), row.System) : FreeChains.Acid(MeltingFats.Saturated(free.Carbons), row.System);
            return Pick(row, pure.MeltingPoint, pure.EnthalpyOfFusion, pure.MolarMass);
        }

        // A pseudo-beta-prime form packs like beta-prime; where two are printed the more stable one is meant.
        Polymorph? form = row.Quantity.Split(' ')[^1] switch
        {
            "alpha" => Polymorph.Alpha,
            "beta-prime" or "pseudo-beta-prime" or "pseudo-beta-prime1" => Polymorph.BetaPrime,
            "beta" or "beta1" => Polymorph.Beta,
            "(adiabatic)" or "(DSC)" => Polymorph.Beta,
            _ => null,
        };
        var name = row.System.Split(" (")[0].Split(' ')[^1];
        if (form is not { } f || TriacylglycerolName.Parse(name) is not { } fat)
        {
            return null;
        }

        var measured = f == Polymorph.Beta && !row.Quantity.StartsWith("Wesdorp", StringComparison.Ordinal) ? MeasuredTriacylglycerols.BetaMeltingPoint(fat)?.Celsius : null;
        return Pick(row, measured ?? WesdorpCorrelation.MeltingPoint(fat, f), WesdorpCorrelation.EnthalpyOfFusion(fat, f), fat.MolarMass);
    }

    private static double? Pick(MeltingRow row, double melting, double enthalpy, double molarMass) => row switch
    {
        { Unit: "degC" } => melting,
        { Unit: "J/g" } => 1000 * enthalpy / molarMass,
        { Unit: "kJ/mol" } => enthalpy,
        _ => null,
    };
}
