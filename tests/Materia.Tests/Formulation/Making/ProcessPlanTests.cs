using Materia.Catalogue;
using Materia.Formulation.Making;

namespace Materia.Tests.Formulation.Making;

/// <summary>Plans of usual formulas, as a maker would expect them (common practice).</summary>
public sealed class ProcessPlanTests
{
    [Fact]
    public void Plan_WhippedMask_MeltsCoolsChillsAndWhips()
    {
        var plan = Plans.Of(Plans.WhippedMask);

        plan.Steps.Select(s => s.Phase).ShouldBe(
            [MakingStage.Prepare, MakingStage.Melt, MakingStage.Oil, MakingStage.Cool, MakingStage.Powder, MakingStage.CoolDown, MakingStage.Chill, MakingStage.Whip, MakingStage.Fill, MakingStage.Set]);
        Step(plan, MakingStage.Powder).Ingredients.ShouldHaveSingleItem().Ingredient.ShouldBe("kaolin");
        Step(plan, MakingStage.Melt).Cautions.ShouldContain(c => c.Text.Contains("hot fat") && c.Source == "burn-time-review");
        Step(plan, MakingStage.Powder).Cautions.ShouldContain(c => c.Source == "niosh-nmam-r");
        plan.Heating.ShouldNotBeNull().Power.ShouldBe(600);
    }

    // foodreview-shortening-2017: 10 to 25 % solid. mcgee-2004-copy: butter is aerated at 18 °C, shortening at 24 to 27 °C; a soft butter mask lies at or below those.
    [Fact]
    public void Plan_WhippedMask_WhipsWhereTheSolidContentTakesAir()
    {
        var window = Plans.Of(Plans.WhippedMask).Whipping.ShouldNotBeNull();

        window.From.ShouldBeLessThan(window.ChillTo);
        window.ChillTo.ShouldBeLessThan(window.To);
        window.ChillTo.ShouldBeInRange(8, 24);
        window.To.ShouldBeInRange(18, 27);
    }

    // 100 g before are 100 / 1.4 = 71 g of the same volume after: hand-worked.
    [Fact]
    public void Plan_WhippedMask_SaysHowTheCupWeighs() => Step(Plans.Of(Plans.WhippedMask), MakingStage.Whip).Action.ShouldContain("71 g for every 100 g");

    // Beeswax is melted by 61 to 66 °C in every monograph, so the trade heats it to about 70.
    [Fact]
    public void Plan_WaxBalm_HeatsPastTheWaxAndPoursBeforeItSets()
    {
        var plan = Plans.Of(Plans.WaxBalm);

        plan.Heating.ShouldNotBeNull().Temperature.ShouldBe(70, 1);
        var pour = Step(plan, MakingStage.Fill).Temperature.ShouldNotBeNull();
        pour.Value.ShouldBeGreaterThan(plan.Cooling!.StiffensAt!.Value);
        pour.Value.ShouldBeLessThan(plan.Heating.Temperature);
        plan.Steps[^1].Phase.ShouldBe(MakingStage.Set);
        plan.Whipping.ShouldBeNull();
    }

    [Fact]
    public void Plan_OilBlend_SaysThatNothingIsHeated()
    {
        var plan = Plans.Of(Plans.OilBlend);

        plan.Heating.ShouldBeNull();
        plan.Cooling.ShouldBeNull();
        plan.Steps[0].Action.ShouldContain("No heating is needed");
        plan.Steps.ShouldAllBe(s => s.Temperature == null || s.Temperature.Value == 20);
        plan.Steps.Single(s => s.Ingredients.Any(i => i.Ingredient == "rosemary-oil-verbenone")).Phase.ShouldBe(MakingStage.CoolDown);
    }

    [Fact]
    public void Plan_Cream_HeatsBothPhasesAndAddsThePreservativeCool()
    {
        var plan = Plans.Of(Plans.Cream);

        var water = Step(plan, MakingStage.Water);
        var melt = Step(plan, MakingStage.Melt);
        water.Ingredients.Select(i => i.Ingredient).ShouldBe(["water", "glycerin", "xanthan-gum"]);
        melt.Ingredients.ShouldContain(i => i.Ingredient == "cetearyl-olivate-sorbitan-olivate");
        water.Temperature!.Value.ShouldBe(melt.Temperature!.Value);
        var cool = Step(plan, MakingStage.CoolDown);
        cool.Ingredients.Select(i => i.Ingredient).ShouldBe(["phenoxyethanol-ethylhexylglycerin", "lavender-oil"]);
        cool.Temperature!.Value.ShouldBeLessThanOrEqualTo(40);
        Step(plan, MakingStage.Check).Action.ShouldContain("pH");
        plan.Steps.ToList().FindIndex(s => s.Phase == MakingStage.Emulsify).ShouldBeLessThan(plan.Steps.ToList().FindIndex(s => s.Phase == MakingStage.CoolDown));
    }

    [Fact]
    public void Plan_Powders_AreMixedWithoutHeat()
    {
        var plan = Plans.Of(Plans.Powder);

        plan.Heating.ShouldBeNull();
        Step(plan, MakingStage.Powder).Ingredients.Select(i => i.Ingredient).ShouldBe(["zinc-oxide", "calcium-carbonate", "kaolin", "corn-starch"]);
        Step(plan, MakingStage.CoolDown).Ingredients.ShouldHaveSingleItem().Ingredient.ShouldBe("lavender-oil");
    }

    [Fact]
    public void Plan_OwnPhase_IsKept()
    {
        var plan = Plans.Of("""{ "lines": [ { "ingredient": "shea-butter", "percent": 60 }, { "ingredient": "sunflower-oil", "percent": 30, "phase": "cool-down" }, { "ingredient": "kaolin", "balance": true, "phase": "cool-down" } ] }""");

        var oil = plan.Steps.SelectMany(s => s.Ingredients).Single(i => i.Ingredient == "sunflower-oil");
        oil.Phase.ShouldBe(ProcessPhase.CoolDown);
        oil.Because.ShouldContain("You put it");
        oil.Source.ShouldBe("own");
    }

    // Frankincense oil flashes at 32 °C in the catalogue: 5 °C below that is 27, where a balm of beeswax has long set.
    [Fact]
    public void Plan_BalmWithALowFlashPoint_KeepsItOutOfTheHotMelt()
    {
        var plan = Plans.Of("""{ "lines": [ { "ingredient": "beeswax", "percent": 20 }, { "ingredient": "frankincense-oil", "percent": 1 }, { "ingredient": "sunflower-oil", "balance": true } ] }""");

        var step = Step(plan, MakingStage.CoolDown);
        step.Temperature!.High.ShouldBeLessThanOrEqualTo(27);
        plan.Warnings.ShouldContain(w => w.Contains("may go in no hotter than 27 °C"));
    }

    [Fact]
    public void Plan_PowerDoubled_HalvesTheTime()
    {
        string With(int watts) => $$"""{ "lines": [ { "ingredient": "shea-butter", "percent": 100 } ], "batch": { "mass": 2, "unit": "kg" }, "making": { "heaterPower": { "value": {{watts}}, "unit": "W" } } }""";
        double Time(int watts) => Step(Plans.Of(With(watts)), MakingStage.Melt).Duration!.Value;

        // Times over an hour are rounded to ten minutes.
        Time(250).ShouldBe(2 * Time(500), 10);
    }

    private static ProcessStep Step(ProcessPlan plan, MakingStage stage) => plan.Steps.First(s => s.Phase == stage);
}
