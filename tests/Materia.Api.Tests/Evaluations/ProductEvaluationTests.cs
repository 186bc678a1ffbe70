using System.Net;
using Materia.Api.Evaluations;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Evaluations;

/// <summary>The sections on the product as a whole over HTTP.</summary>
public abstract class ProductEvaluationTests(ServedApi api)
{
    private const string Asked = "?sections=declaration,preservation,emulsion,naturalOrigin,cautions";

    private static readonly string[] Sections = ["emulsion", "preservation", "declaration", "naturalOrigin", "cautions"];

    [Fact]
    public async Task Post_FiveSections_GivesThoseOnly()
    {
        var evaluation = await api.Client.EvaluateAsync(EvaluationExample.Formula, Asked);

        evaluation.Select(m => m.Key).Where(k => k is not ("release" or "title" or "use" or "market" or "warnings")).ShouldBe(Sections);
        evaluation["preservation"]!["need"]!.GetValue<string>().ShouldBe("not-needed");
        evaluation["preservation"]!["inUse"].Texts().ShouldContain(t => t.Contains("wet hands", StringComparison.Ordinal));
        evaluation["emulsion"]!["absent"]!.GetValue<string>().ShouldContain("no water");
        evaluation["cautions"]!.AsArray().Select(c => c!["hazard"]!.GetValue<string>()).ShouldContain("undiluted essential oils");
    }

    // The formula's shares: cupuacu 30, babassu 22.5, kaolin 8, cetyl alcohol 4, the oil 0.5 and sunflower the rest, 35.
    [Fact]
    public async Task Post_Declaration_OrdersByWeightAndSumsPerfume()
    {
        var declaration = (await api.Client.EvaluateAsync(EvaluationExample.Formula, "?sections=declaration"))["declaration"]!;

        declaration["text"]!.GetValue<string>().ShouldStartWith(
            "Ingredients: Helianthus Annuus Seed Oil, Theobroma Grandiflorum Seed Butter, Orbignya Oleifera Seed Oil, Kaolin, Cetyl Alcohol, Parfum");
        declaration["alternative"]!.GetValue<string>().ShouldContain("Cetyl Alcohol, Lavandula");
        declaration["law"]!.GetValue<string>().ShouldBe("eu");
        var perfume = declaration["entries"]!.AsArray().Single(e => e!["name"]!.GetValue<string>() == "Parfum")!;
        perfume["share"]!["typical"]!.GetValue<decimal>().ShouldBe(0.5m);
        perfume["group"]!.GetValue<string>().ShouldBe("free");
        perfume["ingredients"].Texts().ShouldBe(["Lavender oil, lot 12"]);
        declaration["checklist"]!.AsArray().Count.ShouldBeGreaterThan(8);
    }

    // EU-ING-04 and US-ING-04: exactly 1 % is ordered in Europe and free in the United States.
    [Theory]
    [InlineData("eu", "Aqua", "ordered")]
    [InlineData("uk", "Aqua", "ordered")]
    [InlineData("us", "Water", "free")]
    public async Task Post_OnePercent_FollowsTheMarket(string market, string water, string group)
    {
        var entries = (await api.Client.EvaluateAsync(Cream(market, "\"ph\": { \"value\": 5 },"), "?sections=declaration"))["declaration"]!["entries"]!.AsArray();

        entries[0]!["name"]!.GetValue<string>().ShouldBe(water);
        entries.Single(e => e!["name"]!.GetValue<string>() == "Gum")!["group"]!.GetValue<string>().ShouldBe(group);
    }

    [Fact]
    public async Task Post_CreamWithWater_NeedsPreservationAndKnowsItsPhases()
    {
        var evaluation = await api.Client.EvaluateAsync(Cream("eu", "\"ph\": { \"low\": 4.8, \"high\": 5.2 },"), Asked + "&explain=true");

        var preservation = evaluation["preservation"]!;
        preservation["need"]!.GetValue<string>().ShouldBe("needed");
        preservation["water"]!["percent"]!["typical"]!.GetValue<decimal>().ShouldBe(70m);
        var benzoic = preservation["preservatives"]!.AsArray().Single(p => p!["name"]!.GetValue<string>() == "Benzoic Acid")!;
        // Middle of the range: 1/(1 + 10^(5 − 4.2)) = 13.68 %, check row P322.
        benzoic["undissociated"]![1]!["percent"]!.GetValue<double>().ShouldBe(13.68, 0.05);
        // (12 × 20 of soft paraffin)/20 offered by an HLB of 12: no gap.
        evaluation["emulsion"]!["gap"]!.GetValue<double>().ShouldBe(0);
        evaluation["naturalOrigin"]!["formulationWater"]!.GetValue<decimal>().ShouldBe(70m);
        evaluation["declaration"]!["steps"]!.AsArray().Count.ShouldBe(evaluation["declaration"]!["entries"]!.AsArray().Count);
    }

    [Fact]
    public async Task Post_EverySourceOfRulesAndCautions_IsServed()
    {
        var evaluation = await api.Client.EvaluateAsync(EvaluationExample.Formula, Asked);

        var sources = evaluation["declaration"]!["rules"]!.AsArray().Concat(evaluation["cautions"]!.AsArray()).Concat(evaluation["preservation"]!["criteria"]!.AsArray())
            .Select(r => r!["source"]!.GetValue<string>()).Distinct().ToList();
        sources.Count.ShouldBeGreaterThan(3);
        foreach (var source in sources)
        {
            (await api.Client.GetJsonAsync("/v1/sources/" + source))["id"]!.GetValue<string>().ShouldBe(source);
        }
    }

    [Theory]
    [InlineData("\"ph\": { \"value\": 15 },", HttpStatusCode.UnprocessableEntity, "/ph/value")]
    [InlineData("\"ph\": { \"low\": 5 },", HttpStatusCode.UnprocessableEntity, "/ph/high")]
    [InlineData("\"ph\": { },", HttpStatusCode.UnprocessableEntity, "/ph/value")]
    [InlineData("\"ph\": 5,", HttpStatusCode.BadRequest, "/ph")]
    [InlineData("\"ph\": { \"acid\": 5 },", HttpStatusCode.BadRequest, "/ph/acid")]
    public async Task Post_WrongPh_IsRefusedAtItsMember(string ph, HttpStatusCode status, string place) =>
        (await api.Client.RefuseAsync(Cream("eu", ph), status, place)).Length.ShouldBeGreaterThan(20);

    private static string Cream(string market, string ph) => $$"""
        { "use": "face-cream", "market": "{{market}}", {{ph}}
          "lines": [
            { "own": { "name": "Spring water", "inciName": "Aqua", "kind": "solvent" }, "percent": 70 },
            { "own": { "name": "Paraffin oil", "inciName": "Oleum", "kind": "hydrocarbon", "requiredHlb": { "value": 12, "unit": "1" } }, "percent": 20 },
            { "own": { "name": "Emulsifier of mine", "inciName": "Emulgator", "kind": "emulsifier", "hlb": { "value": 12, "unit": "1" } }, "percent": 8.5 },
            { "own": { "name": "Gum of mine", "inciName": "Gum", "kind": "thickener" }, "percent": 1 },
            { "own": { "name": "Acid of mine", "inciName": "Benzoic Acid", "kind": "preservative", "dissociationConstant": { "value": 4.2, "unit": "1" } }, "percent": 0.5 } ] }
        """;
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteProductEvaluationTests(SqliteApi api) : ProductEvaluationTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlProductEvaluationTests(PostgreSqlApi api) : ProductEvaluationTests(api);
