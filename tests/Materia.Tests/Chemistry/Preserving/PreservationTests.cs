using Materia.Chemistry.Preserving;
using static Materia.Tests.Chemistry.ProductMaterials;

namespace Materia.Tests.Chemistry.Preserving;

/// <summary>Water, need and preservatives of made-up formulas; sums by hand beside each case.</summary>
public class PreservationTests
{
    [Fact]
    public void Of_HoneyHydrosolAndSolution_AddsUpTheirWater()
    {
        // 10 × 0.17 + 20 × 0.99 + 2 × 0.7 = 1.7 + 19.8 + 1.4 = 22.9 %.
        var water = Preserve(("soya-oil", 68), ("honey", 10), ("rose-water", 20), ("benzoate-solution", 2)).Water;

        (water.Percent.Typical, water.Anhydrous).ShouldBe((22.9m, false));
        water.Sources.Select(s => (s.Ingredient, s.Percent.Typical)).ShouldBe([("rose-water", 19.8m), ("honey", 1.7m), ("benzoate-solution", 1.4m)]);
    }

    // The bound is 0.5 % and is not free of water itself.
    [Theory]
    [InlineData(0.49, true)]
    [InlineData(0.5, false)]
    public void Of_WaterAtTheBound_IsDecidedExactly(double percent, bool anhydrous) =>
        Preserve(("soya-oil", 100 - percent), ("water", percent)).Water.Anhydrous.ShouldBe(anhydrous);

    [Fact]
    public void Of_OilAndClay_NeedsNoneAndSaysWhatWetHandsDo()
    {
        var dry = Preserve(("soya-oil", 90), ("clay", 9.9), ("tocopherol", 0.1));

        dry.Need.ShouldBe(PreservationNeed.NotNeeded);
        dry.InUse[0].ShouldContain("Wet fingers");
        // 0.1 of 90 parts is 1111 mg/kg.
        dry.Antioxidants.ShouldHaveSingleItem().InFats.ShouldBe(1111m);
        dry.WaterActivity.Absent.ShouldNotBeNull();
    }

    [Fact]
    public void Of_ExtractOfUnknownWater_IsNeitherDryNorWet()
    {
        var open = Preserve(("soya-oil", 95), ("green-tea-extract", 5));

        open.Need.ShouldBe(PreservationNeed.Unknown);
        open.Water.Unknown.ShouldBe(["green-tea-extract"]);
        open.Missing.ShouldContain(m => m.Contains("green-tea-extract", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_WaterWithoutPreservative_SaysWhatIsMissing()
    {
        var wet = Preserve(("water", 80), ("glycerin", 20));

        wet.Need.ShouldBe(PreservationNeed.Needed);
        wet.Preservatives.ShouldBeEmpty();
        wet.Missing.ShouldContain(m => m.StartsWith("No preservative is in it", StringComparison.Ordinal));
        wet.Missing.ShouldContain(m => m.Contains("challenge test", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_HalfGlycerin_GivesAnUpperWaterActivityAndClaimsNothing()
    {
        var activity = Preserve(("water", 50), ("glycerin", 50));

        // As above: 0.81 to two decimals.
        activity.WaterActivity.Value.ShouldNotBeNull().ShouldBe(0.81, 0.005);
        activity.Need.ShouldBe(PreservationNeed.Needed);
    }

    // Molar fractions by hand: 28 % water is 1.554 mol, 72 % glycerol 0.782 mol; 0.6653 × exp(−1.16 × 0.3347²) = 0.584.
    [Fact]
    public void Of_MostlyGlycerin_MeetsTheCriterionOfWaterActivity()
    {
        var syrup = Preserve(("water", 28), ("glycerin", 72));

        syrup.WaterActivity.Value.ShouldNotBeNull().ShouldBe(0.584, 0.002);
        syrup.Criteria.Single(c => c.Criterion.StartsWith("water activity", StringComparison.Ordinal)).Met.ShouldBe(true);
        syrup.Need.ShouldBe(PreservationNeed.NotNeeded);
    }

    // ISO 29621 as the laboratory's page words it: above 20 %.
    [Theory]
    [InlineData(20, PreservationNeed.Needed)]
    [InlineData(20.1, PreservationNeed.NotNeeded)]
    public void Of_Ethanol_CountsAboveTwentyPercent(double percent, PreservationNeed need) =>
        Preserve(("water", 100 - percent), ("alcohol", percent)).Need.ShouldBe(need);

    [Theory]
    [InlineData(2.7, PreservationNeed.NotNeeded)]
    [InlineData(2.8, PreservationNeed.Needed)]
    [InlineData(10.3, PreservationNeed.NotNeeded)]
    public void Of_Ph_CountsWithTheErrorOfAStrip(double ph, PreservationNeed need) =>
        Preserve(PhRange.Of((decimal)ph, null, null), ("water", 100)).Need.ShouldBe(need);

    [Fact]
    public void Of_BenzoateWithoutPh_ShowsTheTableAndAsksForIt()
    {
        var found = Preserve(("water", 99.5), ("sodium-benzoate", 0.5));

        var benzoate = found.Preservatives.ShouldHaveSingleItem();
        benzoate.Undissociated.Select(u => u.Ph).ShouldBe([4.0m, 4.5m, 5.0m, 5.5m, 6.0m]);
        // 0.5 % × 0.8474 × 0.6131 (check row P321) = 0.2598 % of undissociated acid at pH 4; four digits as printed there.
        benzoate.Undissociated[0].OfFormula.ShouldNotBeNull().ShouldBe(0.2598, 0.0002);
        benzoate.FitsPh.ShouldBeNull();
        benzoate.Listed.ShouldBe(true);
        found.Missing.ShouldContain(m => m.StartsWith("Measure the pH", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_BenzoateAtPhSix_DoesNotFitAndSaysHowLittleWorks()
    {
        var found = Preserve(PhRange.Of(6, null, null), ("water", 99.5), ("sodium-benzoate", 0.5));

        var benzoate = found.Preservatives.ShouldHaveSingleItem();
        benzoate.FitsPh.ShouldBe(false);
        benzoate.Undissociated.Select(u => u.Ph).ShouldBe([5.8m, 6m, 6.2m]);
        // Check row P324: 1.56 % at pH 6, to 0.05 points.
        benzoate.Undissociated[1].Percent.ShouldBe(1.56, 0.05);
        found.Missing.ShouldContain(m => m.Contains("pH lies outside", StringComparison.Ordinal));
        found.Steps.ShouldNotBeNull().ShouldContain(s => s.Equation.Contains("pKa", StringComparison.Ordinal) && s.Inputs.Count == 1);
    }

    [Fact]
    public void Of_PhAstrideTheRange_LeavesTheFitOpen() =>
        Preserve(PhRange.Of(5, null, null), ("water", 99.5), ("sodium-benzoate", 0.5)).Preservatives[0].FitsPh.ShouldBeNull();

    [Fact]
    public void Of_ParabenBesideVegetableOil_LosesMostOfItToTheOil()
    {
        // 20 % oil of 0.92 over 79.8 % water: φ = 0.2724. C_w = 0.2 × 1.2724/(7.5 × 0.2724 + 1) = 0.0836 % w/v; the acid is undissociated at pH 5.
        var partition = Preserve(PhRange.Of(null, 5, 5), ("water", 79.8), ("soya-oil", 20), ("methylparaben", 0.2)).Preservatives.ShouldHaveSingleItem().Partition.ShouldNotBeNull();

        partition.Oil.ShouldBe("soya oil");
        partition.InWater.ShouldBe(0.0836, 0.0005);
    }

    [Fact]
    public void Of_PreservativeBesideOilAndEmulsifier_SaysWhatIsNotComputed()
    {
        var found = Preserve(("water", 77.5), ("soya-oil", 20), ("polysorbate-80", 2), ("sodium-benzoate", 0.5));

        found.Preservatives[0].Partition.ShouldBeNull();
        found.Caveats.Count.ShouldBe(2);
        found.Caveats[0].ShouldContain("Sodium Benzoate");
        Preserve(("water", 99.5), ("sodium-benzoate", 0.5)).Caveats.ShouldBeEmpty();
    }

    [Fact]
    public void Of_CationicBesideAnionicAndBenzoate_NamesBothConflicts() =>
        Preserve(("water", 89.5), ("cationic", 5), ("anionic", 5), ("sodium-benzoate", 0.5)).Incompatibilities.Count.ShouldBe(2);

    [Fact]
    public void Of_ChargeOfASolution_CountsForItsPart() =>
        Preserve(("water", 85), ("cationic", 5), ("dissolved-anionic", 10)).Incompatibilities.ShouldHaveSingleItem().ShouldContain("dissolved-anionic");

    // 2 % of a solution of 10 %: the part without a record counts, the water does not.
    [Fact]
    public void Of_PreservativeWhosePartsAreUnknown_CountsItsParts()
    {
        var novum = Preserve(("water", 98), ("new-preservative", 2)).Preservatives.ShouldHaveSingleItem();

        (novum.Name, novum.Percent.Typical).ShouldBe(("Novum", 0.2m));
    }

    [Fact]
    public void Of_SolutionOfPreservative_CountsThePartOnly() =>
        Preserve(("water", 98), ("benzoate-solution", 2)).Preservatives.Single(p => p.Name == "Sodium Benzoate").Percent.Typical.ShouldBe(0.6m);

    [Fact]
    public void Of_PreservativeThatTheListLacks_IsSaid()
    {
        var found = Preserve(("water", 99), ("methylparaben", 1));

        found.Preservatives.ShouldHaveSingleItem().Listed.ShouldBe(false);
        found.Missing.ShouldContain(m => m.StartsWith("Nothing in it is on the law's list", StringComparison.Ordinal));
    }

    private static Preservation Preserve(params (string, double)[] shares) => Preserve(null, shares);

    private static Preservation Preserve(PhRange? ph, params (string, double)[] shares) => FormulaPreservation.Of(Blend(shares), ph, null, [BenzoicAcid]);
}
