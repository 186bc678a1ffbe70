using System.Text.Json.Nodes;
using Materia.Api.Evaluations;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Evaluations;

/// <summary>Evaluations over HTTP, on the shipped catalogue.</summary>
public abstract class EvaluationTests(ServedApi api)
{
    private static readonly string[] Sections =
        ["formula", "fattyAcids", "iodineValue", "saponificationValue", "melting", "density", "flow", "oxidation", "emulsion", "preservation",
        "limits", "allergens", "compositionGaps", "declaration", "naturalOrigin", "batch", "cost", "cautions", "directions", "coverage"];

    [Fact]
    public async Task Post_DocumentedExample_GivesEverySection()
    {
        var evaluation = await api.Client.EvaluateAsync(EvaluationExample.Formula);

        evaluation.Select(m => m.Key).ShouldBe(["release", "title", "use", "market", "warnings", .. Sections]);
        evaluation["warnings"].Texts().ShouldContain(w => w.Contains("qualified safety assessor", StringComparison.Ordinal));
        evaluation["formula"]!["lines"]!.AsArray().Sum(l => l!["percent"]!.GetValue<decimal>()).ShouldBe(100m);
        evaluation["fattyAcids"]!["acids"]!.AsArray().Sum(a => a!["percent"]!.GetValue<double>()).ShouldBe(100, 0.01);
        foreach (var section in (string[])["iodineValue", "saponificationValue"])
        {
            var figure = evaluation[section]!;
            figure["value"]!.GetValue<double>().ShouldBeInRange(figure["low"]!.GetValue<double>(), figure["high"]!.GetValue<double>());
            figure["method"]!.GetValue<string>().ShouldNotBeNullOrEmpty();
            figure["coverage"]!.GetValue<double>().ShouldBe(1);
        }
    }

    // 250 g less nothing, in steps of 0.1 g: 75, 56.25, 10, 20, 1.25 and 87.5 g are owed; of the two halves the larger share is rounded up.
    [Fact]
    public async Task Post_DocumentedExample_WeighsTheBatchExactly()
    {
        var batch = (await api.Client.EvaluateAsync(EvaluationExample.Formula, "?sections=batch"))["batch"]!;

        batch["lines"]!.AsArray().Select(l => l!["mass"]!["value"]!.ToJsonString()).ShouldBe(["75.0", "56.3", "10.0", "20.0", "1.2", "87.5"]);
        batch["total"]!["value"]!.GetValue<decimal>().ShouldBe(250m);
        batch["lines"]![4]!["own"]!.GetValue<string>().ShouldBe("Lavender oil, lot 12");
        batch["jars"]!["full"]!.GetValue<int>().ShouldBeGreaterThan(0);
    }

    // The example's prices: 75 g of cupuacu at 32 EUR/kg are 2.40, 87.5 g of sunflower oil at 4 EUR/kg are 0.35, the clay is 20 g at 5 EUR/kg, 0.10.
    [Fact]
    public async Task Post_DocumentedExample_ReckonsItsPrices()
    {
        var cost = (await api.Client.EvaluateAsync(EvaluationExample.Formula, "?sections=cost"))["cost"]!;

        cost["batch"]!["value"]!.GetValue<decimal>().ShouldBe(2.85m);
        cost["currency"]!.GetValue<string>().ShouldBe("EUR");
        cost["coverage"]!.GetValue<decimal>().ShouldBe(0.73m);
        cost["withoutPrice"]!.AsArray().Count.ShouldBe(3);
    }

    [Fact]
    public async Task Post_DocumentedExample_GivesDirections()
    {
        var directions = (await api.Client.EvaluateAsync(EvaluationExample.Formula, "?sections=directions"))["directions"]!;

        directions["sentences"]!.AsArray().Select(s => s!["topic"]!.GetValue<string>()).Distinct().ShouldBe(
            ["amount", "application", "duration", "removal", "overnight", "storage", "discard"]);
        directions["cautions"]!.AsArray().Select(c => c!["hazard"]!.GetValue<string>()).ShouldContain("slipping");
    }

    [Theory]
    [InlineData("?sections=flow,iodineValue")]
    [InlineData("?sections=flow&sections=iodineValue")]
    public async Task Post_Sections_GivesThoseOnly(string query)
    {
        var evaluation = await api.Client.EvaluateAsync(EvaluationExample.Formula, query);

        evaluation.Select(m => m.Key).Intersect(Sections).ShouldBe(["flow", "iodineValue"], ignoreOrder: true);
    }

    [Fact]
    public async Task Post_Explain_GivesStepsWhoseSourcesExist()
    {
        var steps = (await api.Client.EvaluateAsync(EvaluationExample.Formula, "?explain=true&sections=iodineValue"))["iodineValue"]!["steps"]!.AsArray();

        steps.ShouldNotBeEmpty();
        steps.ShouldAllBe(s => s!["equation"]!.GetValue<string>().Length > 0 && s["arithmetic"]!.GetValue<string>().Length > 0);
        var sources = steps.SelectMany(s => s!["inputs"]!.AsArray()).Select(i => i!["source"]!.GetValue<string>()).Distinct().ToList();
        sources.ShouldNotBeEmpty();
        foreach (var source in sources)
        {
            (await api.Client.GetJsonAsync("/v1/sources/" + source))["id"]!.GetValue<string>().ShouldBe(source);
        }
    }

    [Fact]
    public async Task Post_WithoutExplain_GivesNoSteps() =>
        (await api.Client.EvaluateAsync(EvaluationExample.Formula)).ToJsonString().ShouldNotContain("\"steps\"");

    // Triolein takes up 86.0 g of iodine per 100 g: the factor of AOCS Cd 1c-85 for bound oleic acid is 0.860, printed to three places.
    [Fact]
    public async Task Post_OwnMaterial_IsComputedWithItsOwnFigures()
    {
        var evaluation = await api.Client.EvaluateAsync(
            """
            { "lines": [ { "own": { "name": "Pure triolein", "kind": "oil", "fattyAcids": [ { "acid": "18:1n-9", "percent": 100 } ],
                                    "density": { "value": 0.91, "unit": "g/mL", "at": { "temperature": 20 } } }, "percent": 100 } ] }
            """,
            "?explain=true");

        evaluation["iodineValue"]!["value"]!.GetValue<double>().ShouldBe(86.0, 0.05);
        evaluation["density"]!["values"]![0]!["value"]!.GetValue<double>().ShouldBe(0.91);
        evaluation["iodineValue"]!["steps"]!.AsArray().SelectMany(s => s!["inputs"]!.AsArray()).Select(i => i!["source"]!.GetValue<string>()).Distinct().ShouldBe(["own"]);
    }

    [Fact]
    public async Task Post_ByMass_GivesPercentages()
    {
        var lines = (await api.Client.EvaluateAsync(
            """{ "lines": [ { "ingredient": "kaolin", "mass": 1, "unit": "oz" }, { "ingredient": "olive-oil", "mass": 85.048569375, "unit": "g" } ] }""", "?sections=formula"))["formula"]!["lines"]!;

        lines.AsArray().Select(l => l!["percent"]!.GetValue<decimal>()).ShouldBe([25m, 75m]);
    }

    [Fact]
    public async Task Post_Formula_NamesTheReleaseInHeaderAndBody()
    {
        using var answer = await api.Client.PostAsync(EvaluationExample.Formula);

        var body = JsonNode.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!;
        answer.Headers.GetValues("Materia-Release").Single().ShouldBe(body["release"]!.GetValue<int>().ToString(System.Globalization.CultureInfo.InvariantCulture));
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteEvaluationTests(SqliteApi api) : EvaluationTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlEvaluationTests(PostgreSqlApi api) : EvaluationTests(api);
