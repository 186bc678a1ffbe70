using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Materia.Api.Matches;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Matches;

/// <summary>Fatty-acid profiles over HTTP.</summary>
public abstract class MatchTests(ServedApi api)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Post_Example_NamesTheAcidOutside()
    {
        using var answer = await PostAsync(MatchExample.Profile);
        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
        var match = JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancellation))!.AsObject();

        match["nearest"]!.AsArray().Count.ShouldBe(3);
        match["claimed"]!["id"]!.GetValue<string>().ShouldBe("olive-oil");
        match["claimed"]!["withinRange"]!.GetValue<bool>().ShouldBeFalse();
        match["claimed"]!["outside"]!.AsArray().Select(o => o!["acid"]!.GetValue<string>()).ShouldContain(a => a.StartsWith("18:2", StringComparison.Ordinal));
        match["mixtures"]!.AsArray().ShouldAllBe(m => Math.Abs(m!["parts"]!.AsArray().Sum(p => p!["percent"]!.GetValue<double>()) - 100) < 0.1);
    }

    [Theory]
    [InlineData("""{ "fattyAcids": [] }""", "/fattyAcids", "18:1")]
    [InlineData("""{ "fattyAcids": [ { "acid": "oleic", "percent": 70 } ] }""", "/fattyAcids/0/acid", "18:1n-9")]
    [InlineData("""{ "fattyAcids": [ { "percent": 70 } ] }""", "/fattyAcids/0/acid", "symbol")]
    [InlineData("""{ "fattyAcids": [ { "acid": "18:1", "percent": -1 } ] }""", "/fattyAcids/0/percent", "0 to 100")]
    [InlineData("""{ "fattyAcids": [ { "acid": "18:1" } ] }""", "/fattyAcids/0/percent", "0 to 100")]
    [InlineData("""{ "fattyAcids": [ { "acid": "18:1", "percent": 0 } ] }""", "/fattyAcids", "more than 0")]
    [InlineData("""{ "fattyAcids": [ { "acid": "18:1", "percent": 70 }, { "acid": "18:1n-9", "percent": 70 } ] }""", "/fattyAcids", "140")]
    [InlineData("""{ "fattyAcids": [ { "acid": "18:1", "percent": 30 }, { "acid": "18:1", "percent": 30 } ] }""", "/fattyAcids/1/acid", "twice")]
    [InlineData("""{ "fattyAcids": [ { "acid": "99:0", "percent": 30 } ] }""", "/fattyAcids/0/acid", "no fatty acid")]
    [InlineData("""{ "fattyAcids": [ { "acid": "18:1", "percent": 70 } ], "claimed": "olive-oyl" }""", "/claimed", "olive-oil")]
    [InlineData("""{ "fattyAcids": [ { "acid": "18:1", "percent": 70 } ], "claimed": "kaolin" }""", "/claimed", "no fatty acids")]
    [InlineData("""{ "fattyAcids": [ { "acid": "18:1", "percent": 70 } ], "limit": 21 }""", "/limit", "1 to 20")]
    public async Task Post_ProfileThatDoesNotHold_Is422AtThePlace(string body, string place, string expected) =>
        await RefuseAsync(body, HttpStatusCode.UnprocessableEntity, place, expected);

    [Theory]
    [InlineData("""{ "fattyAcid": [] }""", "/fattyAcid", "fattyAcids")]
    [InlineData("""{ "fattyAcids": [ { "acid": "18:1", "percent": "70" } ] }""", "/fattyAcids/0/percent", "without quotes")]
    [InlineData("", "", "empty")]
    public async Task Post_UnreadableBody_Is400AtThePlace(string body, string place, string expected) =>
        await RefuseAsync(body, HttpStatusCode.BadRequest, place, expected);

    private Task<HttpResponseMessage> PostAsync(string body) =>
        api.Client.PostAsync("/v1/matches", new StringContent(body, Encoding.UTF8, "application/json"), Cancellation);

    private async Task RefuseAsync(string body, HttpStatusCode status, string place, string expected)
    {
        using var answer = await PostAsync(body);
        var errors = (await answer.ShouldBeProblemAsync(status))["errors"]!.AsObject();
        errors.Select(e => e.Key).ShouldContain(place);
        string.Join(' ', errors[place].Texts()).ShouldContain(expected);
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteMatchTests(SqliteApi api) : MatchTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlMatchTests(PostgreSqlApi api) : MatchTests(api);
