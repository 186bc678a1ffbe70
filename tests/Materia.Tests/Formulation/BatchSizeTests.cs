using Materia.Formulation;
using Materia.Formulation.Batches;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

/// <summary>Batches sized by volume and by jars; squalane of 0.81 g/mL at 20 °C makes them reckonable by hand.</summary>
public sealed class BatchSizeTests
{
    private static readonly Formula Squalane = Of(Percent("squalane", 100));

    // 100 mL × 0.81 g/mL = 81 g; the density's own ±0.5 % gives 0.806 and 0.814, so 80.6 and 81.4 g.
    [Fact]
    public void Evaluate_Volume_IsWeighedByTheDensityAndMarkedApproximate()
    {
        var plan = BatchPlanTests.Plan(Squalane with { Batch = new() { Volume = 100 } });

        plan.Total.ShouldBe(new Mass(81.0m, "g"));
        var basis = plan.Basis.ShouldNotBeNull();
        (basis.By, basis.Approximate, basis.Low, basis.High).ShouldBe(("volume", true, new Mass(80.6m, "g"), new Mass(81.4m, "g")));
    }

    // Whipped by half: 0.81 / 1.5 = 0.54 g/mL. Two jars of 100 mL less 5 %: 190 mL, 102.6 g; over 0.95 for the loss: 108 g. One jar: 51.3 g.
    [Fact]
    public void Evaluate_WhippedJars_TakesOverrunHeadspaceAndLossIntoAccount()
    {
        var plan = BatchPlanTests.Plan(Squalane with { Batch = new() { Jars = 2, JarVolume = 100, LossPercent = 5 }, Whip = new() { OverrunPercent = 50 } });

        plan.Total.ShouldBe(new Mass(108.0m, "g"));
        plan.ExpectedYield.ShouldBe(new Mass(102.6m, "g"));
        plan.Notes.ShouldHaveSingleItem().ShouldContain("5 % of each jar is left empty");
        var jars = plan.Jars.ShouldNotBeNull();
        jars.MassInJar.ShouldBe(51.3, 1e-9);
        (jars.Full, jars.Needed, jars.FillVolume, jars.HeadspacePercent, jars.Approximate).ShouldBe((2, 2, 95m, 5m, true));
        jars.Remainder.ShouldBe(0, 1e-9);
    }

    // 250 g in jars of 60 g: four are 240 g, 10 g are left and need a fifth.
    [Fact]
    public void Evaluate_JarsByMass_NeedNoDensityAndLeaveARemainder()
    {
        var plan = BatchPlanTests.Plan(Squalane with { Batch = new() { Mass = 250, Unit = "g", JarMass = 60 } });

        var jars = plan.Jars.ShouldNotBeNull();
        (jars.Full, jars.FullLow, jars.FullHigh, jars.Needed, jars.Remainder, jars.Approximate).ShouldBe((4, 4, 4, 5, 10, false));
        jars.FillVolume.ShouldBeNull();
    }

    // Three jars of 2 oz: 6 oz, which is 6 × 28.349523125 g by the definition of the avoirdupois ounce (International Yard and Pound, 1959).
    [Fact]
    public void Evaluate_OuncesByJars_AreExactInGrams()
    {
        var plan = BatchPlanTests.Plan(Squalane with { Batch = new() { Unit = "oz", Jars = 3, JarMass = 2 } });

        plan.Total.ShouldBe(new Mass(6m, "[oz_av]"));
        plan.TotalInGrams.ShouldBe(new Mass(170.09713875m, "g"));
        plan.Basis!.Text.ShouldBe("3 × 2 oz = 6 oz.");
        plan.Jars!.Full.ShouldBe(3);
    }

    // A batch for so many jars fills them, whatever the loss and the scale: the yield is not rounded down before jars are counted.
    [Theory]
    [InlineData(6, 59.3, 3)]
    [InlineData(7, 33.3, 1.7)]
    [InlineData(11, 12.34, 7.5)]
    public void Evaluate_SizedByJars_FillsThem(int jars, double volume, double loss)
    {
        var plan = BatchPlanTests.Plan(Squalane with { Batch = new() { Jars = jars, JarVolume = (decimal)volume, LossPercent = (decimal)loss, ScaleResolution = 0.1m } });

        plan.Jars!.Full.ShouldBe(jars);
        plan.Warnings.ShouldBeEmpty();
    }

    // 81 g over 0.81 g/mL.
    [Fact]
    public void Evaluate_LineOfLiquid_HasAnApproximateVolumeAndSolidsHaveNone()
    {
        var plan = BatchPlanTests.Plan(Of(Percent("squalane", 81), Percent("kaolin", 10), Percent("beeswax", 9)) with { Batch = new() { Mass = 100, Unit = "g" } });

        var volume = plan.Lines[0].Volume.ShouldNotBeNull();
        (volume.Value, volume.Unit, volume.Approximate).ShouldBe((100, "mL", true), "exact to the last bit of 81/0.81");
        plan.Lines[1].Volume.ShouldBeNull();
        plan.Lines[2].Volume.ShouldBeNull();
    }

    [Fact]
    public void Evaluate_VolumeWithoutDensity_SaysWhy()
    {
        var own = new Materia.Formulation.OwnMaterials.OwnMaterial { Name = "Mine", Kind = Materia.Catalogue.IngredientKind.Active };
        BatchPlanTests.Plan(Of(Own(own)) with { Batch = new() { Volume = 100 } }).Absent.ShouldNotBeNull().ShouldContain("Give the batch a mass");
    }
}
