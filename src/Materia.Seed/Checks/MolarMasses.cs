using System.Globalization;
using System.Text.RegularExpressions;
using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>The molar mass of each fatty acid and alcohol follows from its formula, and its symbol tells the same formula.</summary>
internal static partial class MolarMasses
{
    /// <summary>
    /// What older atomic weights may add [g/mol]: C 12.0107, H 1.00794 and O 15.9994 against the rounded ones used here
    /// (12.011, 1.008, 15.999) come to 0.0003 n + 0.00006 × 2 n, which is 0.013 for 30 carbons.
    /// </summary>
    private const decimal WeightsTolerance = 0.015m;

    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (acid, at) in seed.FattyAcids)
        {
            if (acid.Carbons < 1 || acid.DoubleBonds >= acid.Carbons)
            {
                faults.Add(at, $"{acid.Carbons} carbons and {acid.DoubleBonds} double bonds are no chain; correct them");
                continue;
            }

            CheckSymbol(acid, at, faults);
            var computed = Of(acid);
            if (Math.Abs(acid.MolarMass - computed) > WeightsTolerance + HalfLastPlace(acid.MolarMass))
            {
                faults.Add(at, string.Create(CultureInfo.InvariantCulture, $"molar_mass {acid.MolarMass} does not follow from the formula, which gives {computed:0.00} g/mol; correct it, or carbons, double_bonds and hydroxyls"));
            }
        }
    }

    /// <summary>
    /// The molar mass by the formula [g/mol]. An acid has 2 hydrogens for each carbon and 2 oxygens; an alcohol 2 hydrogens
    /// more and 1 oxygen less; a double bond and a ring each take 2 hydrogens; a hydroxyl group adds an oxygen. A
    /// cyclopropenoid acid (symbol begins with <c>cyc</c>) has one ring; an epoxy acid (symbol ends with <c>ep</c>) one ring
    /// with one oxygen.
    /// </summary>
    public static decimal Of(FattyAcid acid)
    {
        var epoxy = acid.Symbol.EndsWith("ep", StringComparison.Ordinal) ? 1 : 0;
        var rings = epoxy + (acid.Symbol.StartsWith("cyc", StringComparison.Ordinal) ? 1 : 0);
        var hydrogens = (2 * acid.Carbons) + (acid.Alcohol ? 2 : 0) - (2 * acid.DoubleBonds) - (2 * rings);
        var oxygens = (acid.Alcohol ? 1 : 2) + acid.Hydroxyls + epoxy;
        return (12.011m * acid.Carbons) + (1.008m * hydrogens) + (15.999m * oxygens);
    }

    private static void CheckSymbol(FattyAcid acid, Place at, FaultList faults)
    {
        var form = ChainLength().Match(acid.Symbol);
        var chain = string.Create(CultureInfo.InvariantCulture, $"{acid.Carbons}:{acid.DoubleBonds}");
        if (!form.Success || form.Value != chain)
        {
            faults.Add(at, $"symbol \"{acid.Symbol}\" does not say {chain} as carbons and double_bonds do; correct one of them");
        }

        if (acid.Alcohol != acid.Symbol.EndsWith("-ol", StringComparison.Ordinal))
        {
            faults.Add(at, $"symbol \"{acid.Symbol}\" and alcohol disagree; the symbols of alcohols, and only those, end in -ol");
        }
    }

    /// <summary>Half a unit in the last place as it is written: 0.005 for 282.46, 0.05 for 242.4.</summary>
    private static decimal HalfLastPlace(decimal value) => new(5, 0, 0, false, (byte)(value.Scale + 1));

    [GeneratedRegex(@"\d+:\d+", RegexOptions.CultureInvariant)]
    private static partial Regex ChainLength();
}
