using System.Net;
using System.Text.Json.Nodes;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Reads;

/// <summary>The melting of one ingredient beside its record.</summary>
public abstract class IncludedMeltingTests(ServedApi api)
{
    private const string Url = "/v1/ingredients/cocoa-butter";

    [Fact]
    public async Task Get_IncludeMelting_StandsUnderComputedWithItsMethod()
    {
        var melting = (await api.Client.GetJsonAsync(Url + "?include=melting"))["computed"]!["melting"]!;

        melting["coverage"]!.GetValue<double>().ShouldBe(1);
        melting["warnings"].Texts().ShouldNotBeEmpty();
        melting["solidContent"]!.AsArray().Count.ShouldBe(91);
        melting["clearPoint"]!["value"]!.GetValue<double>().ShouldBeInRange(melting["clearPoint"]!["low"]!.GetValue<double>(), melting["clearPoint"]!["high"]!.GetValue<double>());
        var methods = (await api.Client.GetJsonAsync("/v1/methods"))["items"]!.AsArray().Select(m => m!["id"]!.GetValue<string>());
        methods.ShouldContain(melting["method"]!.GetValue<string>());
    }

    [Fact]
    public async Task Get_IncludeMelting_LeavesTheRecordAsItIs()
    {
        var plain = await api.Client.GetStringAsync(Url, TestContext.Current.CancellationToken);
        var included = (await api.Client.GetJsonAsync(Url + "?include=melting")).AsObject();

        plain.ShouldNotContain("\"computed\"");
        included.Remove("computed").ShouldBeTrue();

        // The members in the same order and each written in the same way: byte for byte the same once the block is out.
        included.ToJsonString(Verbatim).ShouldBe(plain);
    }

    [Fact]
    public async Task Get_IncludeMelting_IsTheEvaluationOfTheIngredientAlone()
    {
        var included = (await api.Client.GetJsonAsync(Url + "?include=melting"))["computed"]!["melting"]!;
        using var answer = await api.Client.PostAsync(
            "/v1/evaluations?sections=melting",
            new StringContent("""{ "lines": [ { "ingredient": "cocoa-butter", "percent": 100 } ] }""", System.Text.Encoding.UTF8, "application/json"),
            TestContext.Current.CancellationToken);
        var evaluated = JsonNode.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!["melting"]!;

        foreach (var member in (string[])["solidContent", "clearPoint", "texture", "method", "model"])
        {
            JsonNode.DeepEquals(included[member], evaluated[member]).ShouldBeTrue(member);
        }
    }

    [Fact]
    public async Task Get_IncludeMeltingOfAPowder_SaysWhyThereIsNone()
    {
        var melting = (await api.Client.GetJsonAsync("/v1/ingredients/kaolin?include=melting"))["computed"]!["melting"]!;

        melting["absent"]!.GetValue<string>().ShouldNotBeNullOrWhiteSpace();
        melting["solidContent"]!.AsArray().ShouldBeEmpty();
        melting["clearPoint"].ShouldBeNull();
    }

    [Fact]
    public async Task Get_IncludeMeltingAgain_IsNotModified()
    {
        using var first = await api.Client.GetAsync(Url + "?include=melting", TestContext.Current.CancellationToken);
        using var plain = await api.Client.GetAsync(Url, TestContext.Current.CancellationToken);
        var tag = first.Headers.ETag!.ToString();

        using var again = await api.Client.SendAsync(HttpMethod.Get, Url + "?include=melting", ("If-None-Match", tag));

        again.StatusCode.ShouldBe(HttpStatusCode.NotModified);
        plain.Headers.ETag!.ToString().ShouldNotBe(tag);
    }

    [Theory]
    [InlineData("?include=melting,smell")]
    [InlineData("?include=melting&include=smell")]
    [InlineData("?include=smell")]
    public async Task Get_IncludeOfSomethingUnknown_Is400NamingTheKnown(string query)
    {
        using var answer = await api.Client.GetAsync(Url + query, TestContext.Current.CancellationToken);

        var problem = await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest);
        string.Join(' ', problem["errors"]!["?include"].Texts()).ShouldContain("'smell'; it is one of melting");
    }

    [Fact]
    public async Task Get_EmptyInclude_IsThePlainRecord() =>
        (await api.Client.GetStringAsync(Url + "?include=", TestContext.Current.CancellationToken))
            .ShouldBe(await api.Client.GetStringAsync(Url, TestContext.Current.CancellationToken));

    [Fact]
    public async Task Get_IncludeMeltingOfNothingKnown_Is404()
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients/shae-buter?include=melting", TestContext.Current.CancellationToken);

        (await answer.ShouldBeProblemAsync(HttpStatusCode.NotFound))["detail"]!.GetValue<string>().ShouldContain("shea-butter");
    }

    private static readonly System.Text.Json.JsonSerializerOptions Verbatim = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteIncludedMeltingTests(SqliteApi api) : IncludedMeltingTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlIncludedMeltingTests(PostgreSqlApi api) : IncludedMeltingTests(api);
