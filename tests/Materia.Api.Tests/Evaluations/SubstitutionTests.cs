using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json.Nodes;
using Materia.Api.Designs;
using Materia.Api.Substitutions;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Evaluations;

/// <summary>Substitutions and designs over HTTP.</summary>
[Collection(nameof(SqliteApi))]
public sealed class SubstitutionTests(SqliteApi api)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/v1/substitutions", SubstitutionEndpoints.Example)]
    [InlineData("/v1/designs", DesignEndpoints.Example)]
    public async Task Post_Example_GivesFormulasThatCanBeEvaluated(string url, string body)
    {
        var answer = await TakenAsync(url, body);

        answer["cut"]!.GetValue<bool>().ShouldBeFalse();
        answer["proposals"]!.AsArray().Count.ShouldBeGreaterThan(0);
        foreach (var proposal in answer["proposals"]!.AsArray())
        {
            var formula = proposal!["formula"]!;
            formula["lines"]!.AsArray().Sum(l => l!["percent"]!.GetValue<decimal>()).ShouldBe(100);
            formula["use"]!.GetValue<string>().ShouldBe("body-lotion");
            (await api.Client.EvaluateAsync(formula.ToJsonString(), "?sections=formula,melting"))["melting"]!["solidContent"]!.AsArray().Count.ShouldBeGreaterThan(0);
        }

        var method = answer["method"]!.GetValue<string>();
        (await api.Client.GetJsonAsync("/v1/methods"))["items"]!.AsArray().Select(m => m!["id"]!.GetValue<string>()).ShouldContain(method);
    }

    [Fact]
    public async Task Post_Substitution_ShowsFiguresBeforeAndAfterAsTheEvaluationHasThem()
    {
        var proposal = (await TakenAsync("/v1/substitutions", SubstitutionEndpoints.Example))["proposals"]![0]!;
        var iodine = proposal["differences"]!.AsArray().Single(d => d!["property"]!.GetValue<string>() == "iodine-value")!;

        var evaluation = await api.Client.EvaluateAsync(proposal["formula"]!.ToJsonString(), "?sections=iodineValue");

        // Both are written to four significant digits; the evaluation rounds to two decimals before.
        iodine["after"]!.GetValue<double>().ShouldBe(evaluation["iodineValue"]!["value"]!.GetValue<double>(), 0.011);
        proposal["notice"]!.GetValue<string>().ShouldEndWith(".");
    }

    [Theory]
    [InlineData("/v1/substitutions", """{ "formula": { "lines": [ { "ingredient": "olive-oil", "percent": 100 } ] }, "without": [ "shea-butter" ] }""", HttpStatusCode.UnprocessableEntity, "/without/0")]
    [InlineData("/v1/substitutions", """{ "formula": { "lines": [ { "ingredient": "olive-oil", "percent": 100 } ] }, "without": [ "olive-oil" ], "locked": [ 1.5 ] }""", HttpStatusCode.BadRequest, "/locked/0")]
    [InlineData("/v1/substitutions", """{ "formula": { "lines": [ { "ingredient": "olive-oil", "percent": 100 } ] }, "without": [ "olive-oil" ], "pantrie": [] }""", HttpStatusCode.BadRequest, "/pantrie")]
    [InlineData("/v1/designs", """{ "pantry": [], "targets": [ { "property": "clear-point", "high": 40 } ] }""", HttpStatusCode.UnprocessableEntity, "/pantry")]
    [InlineData("/v1/designs", """{ "pantry": [ { "ingredient": "olive-oil" } ], "targets": [ { "property": "fluffiness", "high": 40 } ] }""", HttpStatusCode.BadRequest, "/targets/0/property")]
    public async Task Post_WrongRequest_IsAProblemThatNamesThePlace(string url, string body, HttpStatusCode status, string place)
    {
        using var answer = await PostAsync(url, body);

        (await answer.ShouldBeProblemAsync(status))["errors"]!.AsObject().Select(e => e.Key).ShouldContain(place);
    }

    [Fact]
    public async Task Post_SameBodyTwice_GivesTheSameAnswer() =>
        (await TakenAsync("/v1/designs", DesignEndpoints.Example)).ToJsonString().ShouldBe((await TakenAsync("/v1/designs", DesignEndpoints.Example)).ToJsonString());

    private Task<HttpResponseMessage> PostAsync(string url, string body) => api.Client.PostAsync(url, new StringContent(body, Encoding.UTF8, "application/json"), Cancellation);

    // The longest time budget, so that a busy machine does not cut the search.
    private async Task<JsonObject> TakenAsync(string url, string body)
    {
        var patient = JsonNode.Parse(body)!.AsObject();
        patient["timeBudget"] = 10;
        using var answer = await PostAsync(url, patient.ToJsonString());
        answer.StatusCode.ShouldBe(HttpStatusCode.OK, await answer.Content.ReadAsStringAsync(Cancellation));
        return (await answer.Content.ReadFromJsonAsync<JsonObject>(Cancellation))!;
    }
}
