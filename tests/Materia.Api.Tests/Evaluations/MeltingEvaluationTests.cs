using System.Text.Json.Nodes;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Evaluations;

/// <summary>The section melting over HTTP: its form, its models and its steps.</summary>
public abstract class MeltingEvaluationTests(ServedApi api)
{
    private const string CocoaButter = """{ "lines": [ { "ingredient": "cocoa-butter", "percent": 100 } ] }""";

    [Fact]
    public async Task Post_Melting_WritesTheCurveInShort()
    {
        var points = (await MeltingAsync())["solidContent"]!.AsArray();

        points.Select(p => p!["temperature"]!.GetValue<int>()).ShouldBe(Enumerable.Range(-10, 91));
        foreach (var number in points.SelectMany(p => new[] { p!["percent"]!, p["low"]!, p["high"]! }))
        {
            var text = number.ToJsonString();
            text.ShouldMatch(@"^\d{1,3}(\.\d{1,2})?$");
            number.GetValue<double>().ShouldBeInRange(0, 100);
        }

        // All melt by 40 Cel (form VI 36.3 at the most), so nothing but noughts stands there.
        points.Where(p => p!["temperature"]!.GetValue<int>() > 45).ShouldAllBe(p => p!["percent"]!.ToJsonString() == "0");
    }

    [Fact]
    public async Task Post_OtherMelting_HasFourDigits()
    {
        var melting = await MeltingAsync();

        foreach (var figure in (string[])["clearPoint", "slipPoint", "meltingStart", "latentHeat"])
        {
            melting[figure]!["value"]!.ToJsonString().Replace(".", "", StringComparison.Ordinal).TrimStart('0').Length.ShouldBeLessThanOrEqualTo(4, figure);
        }
    }

    // A mixed crystal takes more species in than pure ones do, so the weights of mixing 0, the table's and 1 stand in this order.
    [Fact]
    public async Task Post_Models_MixingMakesItHarder()
    {
        var usual = await MeltingAsync();
        var pure = await MeltingAsync("&meltingModel=pure-crystals");
        var ideal = await MeltingAsync("&meltingModel=ideal-classes");

        usual["model"]!.GetValue<string>().ShouldBe("class-solutions");
        pure["model"]!.GetValue<string>().ShouldBe("pure-crystals");
        ideal["model"]!.GetValue<string>().ShouldBe("ideal-classes");
        SolidAt(pure, 30).ShouldBeLessThan(SolidAt(usual, 30));
        SolidAt(usual, 30).ShouldBeLessThan(SolidAt(ideal, 30));
        pure["warnings"].Texts().ShouldContain(w => w.Contains("comparison", StringComparison.Ordinal));
        usual["warnings"].Texts().ShouldNotContain(w => w.Contains("comparison", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Post_UsualModelByName_IsTheUsualAnswer() =>
        JsonNode.DeepEquals(await MeltingAsync("&meltingModel=class-solutions"), await MeltingAsync()).ShouldBeTrue();

    [Theory]
    [InlineData("&explain=true", 20)]
    [InlineData("&explain=true&explainAt=31", 31)]
    [InlineData("&explain=true&explainAt=-10", -10)]
    [InlineData("&explain=true&explainAt=80", 80)]
    public async Task Post_ExplainAt_ShowsTheEquilibriumThere(string query, int temperature)
    {
        var melting = await MeltingAsync(query);

        var step = melting["steps"]!.AsArray().Single(s => s!["what"]!.GetValue<string>().StartsWith("Equilibrium", StringComparison.Ordinal))!;
        step["what"]!.GetValue<string>().ShouldBe(FormattableString.Invariant($"Equilibrium at {temperature} Cel"));

        // The step gives one decimal, the curve two.
        step["arithmetic"]!.GetValue<string>().ShouldEndWith(FormattableString.Invariant($"in all {SolidAt(melting, temperature):0.0} % solid by mass"));
    }

    [Fact]
    public async Task Post_Explain_NamesClassesInKebabCase() =>
        (await MeltingAsync("&explain=true"))["steps"]!.ToJsonString().ShouldContain("(symmetric-monounsaturated)");

    private static double SolidAt(JsonNode melting, int temperature) => melting["solidContent"]![temperature + 10]!["percent"]!.GetValue<double>();

    private async Task<JsonNode> MeltingAsync(string query = "") => (await api.Client.EvaluateAsync(CocoaButter, "?sections=melting" + query))["melting"]!;
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteMeltingEvaluationTests(SqliteApi api) : MeltingEvaluationTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlMeltingEvaluationTests(PostgreSqlApi api) : MeltingEvaluationTests(api);
