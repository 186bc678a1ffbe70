using System.Text.Json;
using Materia.Formulation;
using Materia.Formulation.Sections;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class FormulationJsonTests
{
    [Fact]
    public void Options_Evaluation_WritesEachSectionUnderItsName()
    {
        var json = Write(Of(Percent("olive-oil", 60), Percent("kaolin", 40)) with { Title = "Two" }, new());

        json.EnumerateObject().Select(m => m.Name).ShouldBe(["release", "title", "warnings", .. EvaluationSections.All.Select(s => s.Name)]);
        json.GetProperty("formula").GetProperty("lines")[1].GetProperty("percent").GetRawText().ShouldBe("40");
    }

    [Fact]
    public void Options_SomeSections_WritesThoseOnly() =>
        Write(Of(Percent("olive-oil", 100)), new() { Sections = [ChemistrySections.Flow] }).EnumerateObject().Select(m => m.Name).ShouldBe(["release", "warnings", "flow"]);

    [Fact]
    public void Options_ComputedFigure_WritesNoughtsAndEmptyLists()
    {
        var figure = Write(Of(Percent("squalane", 100)), new() { Sections = [ChemistrySections.SaponificationValue] }).GetProperty("saponificationValue");

        figure.GetProperty("value").GetDouble().ShouldBe(0);
        figure.GetProperty("low").GetDouble().ShouldBe(0);
        figure.GetProperty("warnings").GetArrayLength().ShouldBe(0);
        figure.TryGetProperty("steps", out _).ShouldBeFalse();
    }

    [Fact]
    public void Options_Formula_ReadsTheDocumentedShape()
    {
        var formula = JsonSerializer.Deserialize<Formula>(
            """
            { "title": "Whipped cupuacu hair mask", "use": "hair-mask-rinse-off", "market": "eu",
              "lines": [
                { "ingredient": "cupuacu-butter", "percent": 30 },
                { "ingredient": "babassu-oil", "percent": 22.5 },
                { "ingredient": "kaolin", "percent": 8, "phase": "cool-down" },
                { "own": { "name": "Lavender oil, lot 12", "inciName": "Lavandula Angustifolia Oil", "kind": "essential-oil",
                           "constituents": [ { "substance": "linalool", "percent": 35 }, { "substance": "115-95-7", "percent": 32 } ],
                           "density": { "value": 0.885, "unit": "g/mL" } }, "percent": 0.5 },
                { "ingredient": "sunflower-oil", "balance": true } ],
              "batch": { "mass": 250, "unit": "g", "scaleResolution": 0.1, "lossPercent": 3 },
              "whip": { "overrunPercent": 40 } }
            """,
            FormulationJson.Options).ShouldNotBeNull();

        Normalised(formula).Lines.Select(l => (l.Material, l.Percent, l.Phase)).ShouldBe(
        [
            ("cupuacu-butter", 30m, null), ("babassu-oil", 22.5m, null), ("kaolin", 8m, Phase.CoolDown), ("Lavender oil, lot 12", 0.5m, null), ("sunflower-oil", 39m, null),
        ]);
    }

    private static JsonElement Write(Formula formula, EvaluationOptions options) =>
        JsonSerializer.SerializeToElement(Evaluator.Evaluate(Normalised(formula), TestCatalogue.Release, options), FormulationJson.Options);
}
