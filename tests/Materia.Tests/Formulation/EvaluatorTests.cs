using CsCheck;
using Materia.Formulation;
using Materia.Formulation.Batches;
using Materia.Formulation.OwnMaterials;
using Materia.Formulation.Sections;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class EvaluatorTests
{
    // Binary sums in another order differ in the last places: a millionth of a millionth is far above that and far below any figure.
    private const double Rounding = 1e-12;

    private static readonly FormulaLine[] Twelve =
    [
        Percent("shea-butter", 20), Percent("cupuacu-butter", 15), Percent("babassu-oil", 12), Percent("olive-oil", 10), Percent("linseed-oil", 2),
        Percent("squalane", 3), Percent("beeswax", 4), Percent("cetyl-alcohol", 5), Percent("kaolin", 6), Percent("silica", 1),
        Percent("lavender-oil", 0.5m), Balance("sunflower-oil"),
    ];

    private static readonly Formula Whipped = Of(Twelve) with
    {
        Title = "Twelve lines",
        Use = "hair-mask-rinse-off",
        Market = Market.Eu,
        Batch = new() { Mass = 250, Unit = "g", ScaleResolution = 0.1m, LossPercent = 3, JarVolume = 120 },
        Whip = new() { OverrunPercent = 40 },
    };

    [Fact]
    public void Evaluate_TwelveLines_GivesEverySectionAndSaysWhatItIs()
    {
        var evaluation = Evaluate(Whipped);

        evaluation.Results.Keys.ShouldBe(EvaluationSections.All);
        evaluation.Release.ShouldBe(7);
        evaluation.Title.ShouldBe("Twelve lines");
        evaluation.Use.ShouldBe("hair-mask-rinse-off");
        evaluation.Market.ShouldBe(Market.Eu);
        evaluation.Warnings.ShouldContain(w => w.Contains("qualified safety assessor"));
        evaluation.Of(FormulaSummary.Section).ShouldNotBeNull().TotalPercent.ShouldBe(100m);
        evaluation.Of(BatchPlan.Section).ShouldNotBeNull().Lines.Sum(l => l.Mass.Value).ShouldBe(250m);
        evaluation.Of(ChemistrySections.IodineValue).ShouldNotBeNull().Value.ShouldNotBeNull();
        evaluation.Of(ChemistrySections.SaponificationValue).ShouldNotBeNull().Value.ShouldNotBeNull();
        evaluation.Of(ChemistrySections.FattyAcids).ShouldNotBeNull().Acids.Select(a => a.Acid).ShouldBe(["18:0", "18:2n-6", "12:0", "18:1n-9", "18:3n-3"]);
    }

    [Fact]
    public void Evaluate_SomeSections_GivesThoseOnly() =>
        Evaluate(Whipped, new() { Sections = [ChemistrySections.IodineValue] }).Results.Keys.ShouldHaveSingleItem().Name.ShouldBe("iodineValue");

    [Fact]
    public void Evaluate_LinesShuffled_ChangesNoResult() => Gen.Shuffle(Twelve).Sample(lines =>
    {
        var (first, second) = (Evaluate(Of(Twelve)), Evaluate(Of(lines)));
        Near(first.Of(ChemistrySections.IodineValue)!.Value, second.Of(ChemistrySections.IodineValue)!.Value);
        Near(first.Of(ChemistrySections.SaponificationValue)!.Value, second.Of(ChemistrySections.SaponificationValue)!.Value);
        Near(first.Of(FormulaDensity.Section)!.Values[0].Value, second.Of(FormulaDensity.Section)!.Values[0].Value);
        Near(first.Of(ChemistrySections.Oxidation)!.CoxValue.Value, second.Of(ChemistrySections.Oxidation)!.CoxValue.Value);
    });

    // Factors of AOCS Cd 1c-85 for bound acids, g of iodine per g: oleic 0.860, linoleic 1.732, linolenic 2.616; printed to three places.
    [Theory]
    [InlineData("olive-oil", 86.0)]
    [InlineData("sunflower-oil", 173.2)]
    [InlineData("linseed-oil", 261.6)]
    [InlineData("shea-butter", 0)]
    public void Evaluate_SingleIngredient_GivesItsOwnIodineValue(string id, double printed) =>
        Evaluate(Of(Percent(id, 100))).Of(ChemistrySections.IodineValue)!.Value!.Value.ShouldBe(printed, 0.05);

    [Fact]
    public void Evaluate_SingleIngredient_GivesItsOwnDensity() =>
        Evaluate(Of(Percent("squalane", 100))).Of(FormulaDensity.Section)!.Values[0].Value.ShouldBe(0.81, Rounding);

    [Fact]
    public void Evaluate_OwnMaterialLikeACatalogueIngredient_GivesTheSameFigures()
    {
        var own = new OwnMaterial { Name = "My olive oil", Kind = Materia.Catalogue.IngredientKind.Oil, FattyAcids = [new() { Acid = "18:1n-9", Percent = 100 }] };
        var (mine, stored) = (Evaluate(Of(Own(own))), Evaluate(Of(Percent("olive-oil", 100))));

        mine.Of(ChemistrySections.IodineValue)!.Value.ShouldBe(stored.Of(ChemistrySections.IodineValue)!.Value);
        mine.Of(ChemistrySections.SaponificationValue)!.Value.ShouldBe(stored.Of(ChemistrySections.SaponificationValue)!.Value);
    }

    [Fact]
    public void Evaluate_Explain_CarriesStepsWithTheirSources()
    {
        var steps = Evaluate(Whipped, new() { Explain = true }).Of(ChemistrySections.IodineValue)!.Steps.ShouldNotBeNull();

        steps.SelectMany(s => s.Inputs).ShouldContain(i => i.Ingredient == "olive-oil" && i.Source == "test");
        Evaluate(Whipped).Of(ChemistrySections.IodineValue)!.Steps.ShouldBeNull();
    }

    [Fact]
    public void Find_EverySection_IsFoundByItsName() => EvaluationSections.All.ShouldAllBe(s => EvaluationSections.Find(s.Name) == s);

    private static void Near(double? first, double? second)
    {
        first.ShouldNotBeNull();
        second.ShouldNotBeNull();
        second.Value.ShouldBe(first.Value, Math.Abs(first.Value) * Rounding);
    }

    private static Evaluation Evaluate(Formula formula, EvaluationOptions? options = null) =>
        Evaluator.Evaluate(Normalised(formula), TestCatalogue.Release, options ?? new());
}
