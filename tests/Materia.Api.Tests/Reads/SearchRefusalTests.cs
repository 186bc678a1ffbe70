using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Reads;

/// <summary>Query strings that cannot be answered: each is a 400 that names the parameter and says what to do.</summary>
public abstract class SearchRefusalTests(ServedApi api)
{
    [Theory]
    [InlineData("limit=0", "?limit", "from 1 to 100")]
    [InlineData("limit=-1", "?limit", "from 1 to 100")]
    [InlineData("limit=1000000", "?limit", "from 1 to 100")]
    [InlineData("limit=99999999999999999999", "?limit", "from 1 to 100")]
    [InlineData("limit=ten", "?limit", "from 1 to 100")]
    [InlineData("limit=5&limit=6", "?limit", "give it once")]
    [InlineData("melting=36..28", "?melting", "lower number first")]
    [InlineData("melting=28", "?melting", "low..high")]
    [InlineData("melting=..", "?melting", "low..high")]
    [InlineData("melting=28,5..36", "?melting", "decimal point")]
    [InlineData("iodine=NaN..", "?iodine", "decimal point")]
    [InlineData("density=1e308..", "?density", "decimal point")]
    [InlineData("acid=18:1n-9", "?acid", "symbol:low..high")]
    [InlineData("acid=18:1n-9:60..40", "?acid", "lower number first")]
    [InlineData("acid=99:9n-9:40..", "?acid", "fatty-acid table")]
    [InlineData("acid=18:1n-9:40..&acid=18:1n-9:..50", "?acid", "twice")]
    [InlineData("kind=buter", "?kind", "butter")]
    [InlineData("origin=plants", "?origin", "plant")]
    [InlineData("rangeMatch=inside", "?rangeMatch", "within")]
    [InlineData("rangeMatch=within,overlap", "?rangeMatch", "keep one")]
    [InlineData("sort=price", "?sort", "melting")]
    [InlineData("after=tampered", "?after", "")]
    [InlineData("limt=5", "?limt", "'limit'")]
    [InlineData("Limit=5", "?Limit", "'limit'")]
    [InlineData("xyzzyplugh=1", "?xyzzyplugh", "text, kind")]
    public async Task Search_BadParameter_Is400AtTheParameter(string query, string key, string advice)
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients?" + query, TestContext.Current.CancellationToken);

        var problem = await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest);
        problem["type"]!.GetValue<string>().ShouldBe("/problems/invalid-request");
        var errors = problem["errors"]!.AsObject();
        errors.Select(e => e.Key).ShouldBe([key]);
        errors[key].Texts().ShouldContain(message => message.Length > 10 && message.Contains(advice, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Search_SeveralBadParameters_AreAllTold()
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients?limit=0&sort=price&kind=x&melting=abc", TestContext.Current.CancellationToken);

        var problem = await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest);
        problem["errors"]!.AsObject().Select(e => e.Key).Order(StringComparer.Ordinal).ShouldBe(["?kind", "?limit", "?melting", "?sort"]);
    }

    [Fact]
    public async Task Search_CursorWithOneLetterChanged_Is400()
    {
        var cursor = (await api.Client.GetJsonAsync("/v1/ingredients?limit=2"))["next"]!.GetValue<string>();

        for (var i = 0; i < cursor.Length; i++)
        {
            var other = cursor[i] == 'A' ? 'B' : 'A';
            var tampered = cursor[..i] + other + cursor[(i + 1)..];
            using var answer = await api.Client.GetAsync("/v1/ingredients?limit=2&after=" + Uri.EscapeDataString(tampered), TestContext.Current.CancellationToken);
            (await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest))["errors"]!["?after"].ShouldNotBeNull($"letter {i}");
        }
    }

    [Fact]
    public async Task Search_CursorOfAnotherSearch_Is400()
    {
        var cursor = (await api.Client.GetJsonAsync("/v1/ingredients?limit=2&kind=oil"))["next"]!.GetValue<string>();

        using var answer = await api.Client.GetAsync("/v1/ingredients?limit=2&kind=butter&after=" + Uri.EscapeDataString(cursor), TestContext.Current.CancellationToken);

        (await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest))["errors"]!["?after"].ShouldNotBeNull();
    }

    [Theory]
    [InlineData("/v1/ingredients/kaolin?full=true", "?full")]
    [InlineData("/v1/release?x=1", "?x")]
    [InlineData("/v1/sources?limit=5", "?limit")]
    [InlineData("/v1/suggestions", "?text")]
    [InlineData("/v1/suggestions?text=%20", "?text")]
    [InlineData("/v1/suggestions?text=a&limit=51", "?limit")]
    public async Task Get_BadParameterOfAnyCall_Is400(string url, string key)
    {
        using var answer = await api.Client.GetAsync(url, TestContext.Current.CancellationToken);

        (await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest))["errors"]!.AsObject().Select(e => e.Key).ShouldBe([key]);
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteSearchRefusalTests(SqliteApi api) : SearchRefusalTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlSearchRefusalTests(PostgreSqlApi api) : SearchRefusalTests(api);
