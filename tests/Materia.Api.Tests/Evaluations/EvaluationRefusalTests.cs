using System.Net;
using System.Text;
using Materia.Api.Evaluations;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Evaluations;

/// <summary>Formulas that cannot be evaluated: each answer says where the fault is and what to do.</summary>
public abstract class EvaluationRefusalTests(ServedApi api)
{
    [Theory]
    [InlineData("", "", "The body is empty")]
    [InlineData("null", "", "send a JSON object")]
    [InlineData("[]", "", "An object { … } is expected")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin" """, "/lines/0/ingredient", "close the brackets")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": 12,5 } ] }""", "/lines/0/percent", "with a dot")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": NaN } ] }""", "/lines/0/percent", "NaN and Infinity are no numbers")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": "12,5" } ] }""", "/lines/0/percent", "without quotes: 12.5")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": "NaN" } ] }""", "/lines/0/percent", "\"NaN\" is not a number")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": 1e308 } ] }""", "/lines/0/percent", "1e308 is not a number that fits")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percnt": 100 } ] }""", "/lines/0/percnt", "Did you mean \"percent\"?")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": 1, "percent": 2 } ] }""", "/lines/0/percent", "stands here twice")]
    [InlineData("""{ "lines": { "ingredient": "kaolin" } }""", "/lines", "A list [ … ] is expected")]
    [InlineData("""{ "market": "US", "lines": [] }""", "/market", "\"eu\", \"uk\", \"us\"")]
    public async Task Post_UnreadableBody_Is400AtThePlace(string body, string place, string expected) =>
        (await api.Client.RefuseAsync(body, HttpStatusCode.BadRequest, place)).ShouldContain(expected);

    [Theory]
    [InlineData("""{ "lines": [] }""", "/lines", "at least one line")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin" } ] }""", "/lines/0/percent", "no amount")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": -5 } ] }""", "/lines/0/percent", "over 0")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": 50 } ] }""", "/lines", "50 points are missing")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "balance": true }, { "ingredient": "beeswax", "balance": true } ] }""", "/lines/1/balance", "Only one line")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": 50 }, { "ingredient": "beeswax", "mass": 50, "unit": "g" } ] }""", "/lines/1/mass", "Use percent on every line")]
    [InlineData("""{ "lines": [ { "ingredient": "kaolin", "percent": 100 } ], "use": "soup" }""", "/use", "hair-mask-rinse-off")]
    [InlineData("""{ "lines": [ { "own": { "name": "Mine", "kind": "oil", "constituents": [ { "substance": "115-95-8", "percent": 1 } ] }, "percent": 100 } ] }""", "/lines/0/own/constituents/0/substance", "check digit")]
    public async Task Post_FormulaThatDoesNotHold_Is422AtThePlace(string body, string place, string expected) =>
        (await api.Client.RefuseAsync(body, HttpStatusCode.UnprocessableEntity, place)).ShouldContain(expected);

    [Theory]
    [InlineData("""{ "mass": 100, "unit": "g", "volume": 100 }""", HttpStatusCode.UnprocessableEntity, "/batch/volume", "not both")]
    [InlineData("""{ "volume": "100 mL" }""", HttpStatusCode.BadRequest, "/batch/volume", "not a number")]
    [InlineData("""{ "jars": 3 }""", HttpStatusCode.UnprocessableEntity, "/batch/jarVolume", "jarMass")]
    [InlineData("""{ "jars": 3, "jarMass": -50 }""", HttpStatusCode.UnprocessableEntity, "/batch/jarMass", "over 0")]
    [InlineData("""{ "jars": 3, "jarMass": 50, "headspacePercent": 5 }""", HttpStatusCode.UnprocessableEntity, "/batch/headspacePercent", "leave it out")]
    [InlineData("""{ "jars": 2.5, "jarMass": 50 }""", HttpStatusCode.BadRequest, "/batch/jars", "whole number")]
    public async Task Post_WrongBatch_IsRefusedAtItsMember(string batch, HttpStatusCode status, string place, string expected) =>
        (await api.Client.RefuseAsync($$"""{ "lines": [ { "ingredient": "kaolin", "percent": 100 } ], "batch": {{batch}} }""", status, place)).ShouldContain(expected);

    [Theory]
    [InlineData("""{ "ingredient": "kaolin", "price": 3, "currency": "EUR", "per": { "mass": 1, "unit": "kg" } }, { "ingredient": "shea-butter", "price": 9, "currency": "USD", "per": { "mass": 1, "unit": "kg" } }""", HttpStatusCode.UnprocessableEntity, "/prices/1/currency", "convert all prices to one currency")]
    [InlineData("""{ "ingredient": "kaolin", "price": -3, "currency": "EUR", "per": { "mass": 1, "unit": "kg" } }""", HttpStatusCode.UnprocessableEntity, "/prices/0/price", "from 0")]
    [InlineData("""{ "ingredient": "kaolin", "price": 3, "currency": "euro", "per": { "mass": 1, "unit": "kg" } }""", HttpStatusCode.UnprocessableEntity, "/prices/0/currency", "ISO 4217")]
    [InlineData("""{ "ingredient": "kaoline", "price": 3, "currency": "EUR", "per": { "mass": 1, "unit": "kg" } }""", HttpStatusCode.UnprocessableEntity, "/prices/0/ingredient", "\"kaolin\"")]
    [InlineData("""{ "ingredient": "kaolin", "price": 3, "currency": "EUR", "per": "kg" }""", HttpStatusCode.BadRequest, "/prices/0/per", "An object")]
    [InlineData("""{ "ingredient": "kaolin", "price": "3,50", "currency": "EUR", "per": { "mass": 1, "unit": "kg" } }""", HttpStatusCode.BadRequest, "/prices/0/price", "3.50")]
    [InlineData("""null""", HttpStatusCode.BadRequest, "/prices/0", "null")]
    public async Task Post_WrongPrices_AreRefusedAtTheirMember(string prices, HttpStatusCode status, string place, string expected) =>
        (await api.Client.RefuseAsync($$"""{ "lines": [ { "ingredient": "kaolin", "percent": 100 } ], "prices": [ {{prices}} ] }""", status, place)).ShouldContain(expected);

    [Fact]
    public async Task Post_UnknownIngredient_Is422WithTheNearest() =>
        (await api.Client.RefuseAsync("""{ "lines": [ { "ingredient": "shae-buter", "percent": 100 } ] }""", HttpStatusCode.UnprocessableEntity, "/lines/0/ingredient"))
            .ShouldContain("\"shea-butter\"");

    [Fact]
    public async Task Post_SeveralFaults_NamesAllOfThem()
    {
        using var answer = await api.Client.PostAsync("""{ "lines": [ { "ingredient": "nonsense", "percent": 0 }, { "percent": 100 } ], "whip": { "overrunPercent": 500 } }""");

        (await answer.ShouldBeProblemAsync(HttpStatusCode.UnprocessableEntity))["errors"]!.AsObject().Select(e => e.Key).ShouldBe(
            ["/lines/0/ingredient", "/lines/0/percent", "/lines/1/ingredient", "/whip/overrunPercent"], ignoreOrder: true);
    }

    [Fact]
    public async Task Post_TenThousandLines_Is422() =>
        (await api.Client.RefuseAsync(
            $$"""{ "lines": [ {{string.Join(',', Enumerable.Repeat("""{ "ingredient": "kaolin", "percent": 0.01 }""", 10_000))}} ] }""", HttpStatusCode.UnprocessableEntity, "/lines"))
            .ShouldContain("at most 200 lines");

    [Fact]
    public async Task Post_TwentyMegabytes_Is413()
    {
        var body = new byte[20_000_000];
        Array.Fill(body, (byte)' ');
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/evaluations") { Content = new ByteArrayContent(body) };
        request.Content.Headers.ContentType = new("application/json");

        // A client that does not ask first may find the connection closed while it still sends.
        request.Headers.ExpectContinue = true;
        using var answer = await api.Client.SendAsync(request, TestContext.Current.CancellationToken);

        await answer.ShouldBeProblemAsync(HttpStatusCode.RequestEntityTooLarge);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("application/json; charset=iso-8859-1")]
    [InlineData("nonsense")]
    [InlineData(null)]
    public async Task Post_OtherContentType_Is415(string? contentType)
    {
        using var answer = await api.Client.PostAsync(Encoding.UTF8.GetBytes(EvaluationExample.Formula), contentType);

        await answer.ShouldBeProblemAsync(HttpStatusCode.UnsupportedMediaType);
    }

    [Fact]
    public async Task Post_NotUtf8_Is400()
    {
        using var answer = await api.Client.PostAsync([.. "{ \"title\": \""u8, 0xFF, .. "\" }"u8], "application/json");

        (await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest))["detail"]!.GetValue<string>().ShouldContain("UTF-8");
    }

    [Theory]
    [InlineData("?sections=smell", "?sections", "The sections are formula, fattyAcids")]
    [InlineData("?sections=iodinevalue", "?sections", "Did you mean iodineValue?")]
    [InlineData("?explain=yes", "?explain", "true or false")]
    [InlineData("?meltingModel=ideal", "?meltingModel", "did you mean ideal-classes? It is one of class-solutions, pure-crystals, ideal-classes")]
    [InlineData("?meltingModel=pure-crystals,ideal-classes", "?meltingModel", "one word")]
    [InlineData("?explain=true&explainAt=81", "?explainAt", "a whole number from -10 to 80")]
    [InlineData("?explain=true&explainAt=-11", "?explainAt", "a whole number from -10 to 80")]
    [InlineData("?explain=true&explainAt=32.5", "?explainAt", "a whole number from -10 to 80")]
    [InlineData("?explainAt=32", "?explainAt", "add explain=true")]
    [InlineData("?section=flow", "?section", "Did you mean 'sections'?")]
    public async Task Post_BadQuery_Is400(string query, string key, string expected) =>
        (await api.Client.RefuseAsync(EvaluationExample.Formula, HttpStatusCode.BadRequest, key, query)).ShouldContain(expected);
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteEvaluationRefusalTests(SqliteApi api) : EvaluationRefusalTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlEvaluationRefusalTests(PostgreSqlApi api) : EvaluationRefusalTests(api);
