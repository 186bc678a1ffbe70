using CsCheck;
using Materia.Chemistry.Rules;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry;

/// <summary>The rules against print and against what they must obey.</summary>
public class RuleTests
{
    private static readonly Gen<double> Overrun = Gen.Double[0, 400];

    [Fact]
    public void WaterDensity_PrintedTemperatures_AgreesWithTables()
    {
        // 999.1 at 15 °C and 998.2 at 20 °C stand in the sources' own conversions, printed to one decimal.
        WaterDensity.At(15).ShouldBe(999.1, 0.05);
        WaterDensity.At(20).ShouldBe(998.2, 0.05);
    }

    [Fact]
    public void ArrheniusRate_PublishedEnergies_SpanTheQuotedQ10()
    {
        // Q10 of 2 to 3 is quoted for fatty esters, activation energies of 50 (upper bound, light) to 104 kJ/mol are measured.
        ArrheniusRate.Q10(50, 20).ShouldBe(2, 0.1, "50 kJ/mol is the lower end of the quoted range");
        ArrheniusRate.Q10(79, 20).ShouldBe(3, 0.1, "79 kJ/mol is its upper end");
        Math.Pow(ArrheniusRate.Q10(0, 20), 3).ShouldBe(1);
    }

    [Fact]
    public void WhippedDensity_AnyOverrun_KeepsMassAndVolume() => Gen.Double[0.5, 2].Select(Overrun).Sample((density, overrun) =>
    {
        var whipped = WhippedDensity.Of(density, overrun);

        // The air is what the volume gained; the mass stays.
        (whipped / (1 - WhippedDensity.AirFraction(overrun))).ShouldBe(density, 1e-9);
        WhippedDensity.OverrunPercent(density, whipped).ShouldBe(overrun, 1e-6);
        whipped.ShouldBeLessThanOrEqualTo(density);
    });

    [Fact]
    public void WhippedDensity_FortyPercent_IsTheDefinition()
    {
        // Overrun 40 % means 1.4 times the volume: 2/7 of it is air.
        WhippedDensity.Of(0.91, 40).ShouldBe(0.65, 1e-12);
        WhippedDensity.AirFraction(40).ShouldBe(2.0 / 7, 1e-12);
    }

    [Fact]
    public void WhippedDensity_NegativeOverrun_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => WhippedDensity.Of(0.9, -1));

    [Fact]
    public void FillMass_Batch_FillsWholeJars()
    {
        var fill = FillMass.Of(100, 0.65);

        fill.ShouldBe(61.75, 1e-9, "100 mL to the brim, 5 % head space, 0.65 g/mL");
        FillMass.Containers(250, 3, fill).ShouldBe(4, "242.5 g over 61.75 g is 3.93");
    }

    [Fact]
    public void MaronPierce_MoreSolids_IsThicker() =>
        Gen.Double[0, 0.4].Select(Gen.Double[0, 0.4], Gen.Double[0.45, 0.64]).Sample((a, b, packing) =>
        {
            var (less, more) = (Math.Min(a, b), Math.Max(a, b));
            MaronPierce.RelativeViscosity(less, packing).ShouldBeLessThanOrEqualTo(MaronPierce.RelativeViscosity(more, packing));
            MaronPierce.RelativeViscosity(less, packing).ShouldBeGreaterThanOrEqualTo(1);
        });

    [Fact]
    public void MaronPierce_FullPacking_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => MaronPierce.RelativeViscosity(0.45, 0.45));

    public static IEnumerable<TheoryDataRow<string>> Suspensions() => CheckFiles.Properties
        .Where(r => r.Quantity == "relative_viscosity")
        .Select(r => new TheoryDataRow<string>(r.Id) { TestDisplayName = $"{r.Title}, {r.Note}" });

    [Theory]
    [MemberData(nameof(Suspensions))]
    public void MaronPierce_Spheres_FollowsThomas(string id)
    {
        // The comparison is for well-packed spheres, packing limit 0.68; the correlation itself is recalled.
        var row = CheckFiles.Properties.Single(r => r.Id == id);
        var phi = double.Parse(row.Note["phi=".Length..], System.Globalization.CultureInfo.InvariantCulture);

        var relative = MaronPierce.RelativeViscosity(phi, 0.68);

        row.Tolerance.Allows(row.Value, relative).ShouldBeTrue($"{relative:0.000} against {row.Value} ({row.Tolerance.Text})");
    }

    [Fact]
    public void PackingFromOilAbsorption_Kaolin_IsAsQuoted() =>
        MaronPierce.PackingFromOilAbsorption(40, 2.6).ShouldBe(0.47, 0.005, "kaolin of oil absorption 40 is quoted with 0.47, two decimals");

    [Fact]
    public void WaltherViscosity_Ordinate_IsUndone() => Gen.Double[1, 2000].Sample(nu =>
        WaltherViscosity.FromOrdinate(WaltherViscosity.Ordinate(nu)).ShouldBe(nu, 1e-9 * nu));

    [Fact]
    public void WaltherViscosity_Warmer_IsThinner() =>
        Gen.Double[12.5, 21.5].Select(Gen.Double[0.1, 2.1], Gen.Double[0, 100]).Sample((carbons, doubleBonds, t) =>
            WaltherViscosity.OfComposition(carbons, doubleBonds, 0, t + 5).ShouldBeLessThan(WaltherViscosity.OfComposition(carbons, doubleBonds, 0, t)));

    [Fact]
    public void MolarMass_EveryAcidOfTheTable_FollowsFromItsFormula()
    {
        foreach (var acid in SeedCatalogue.Release.Content.FattyAcids.Where(a => !a.Alcohol))
        {
            var ring = acid.Symbol.StartsWith("cyc-", StringComparison.Ordinal) || acid.Symbol.EndsWith("ep", StringComparison.Ordinal) ? 1 : 0;
            var oxygens = acid.Hydroxyls + (acid.Symbol.EndsWith("ep", StringComparison.Ordinal) ? 1 : 0);

            var mass = MolarMass.OfAcid(acid.Carbons, acid.DoubleBonds, ring, oxygens);

            // The table is printed to two decimals, and handbooks differ in the atomic masses by as much again.
            ((double)acid.MolarMass).ShouldBe(mass, 0.03, acid.Symbol);
        }
    }
}
