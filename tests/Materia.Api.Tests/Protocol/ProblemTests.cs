using System.Net;
using Materia.Api.Http;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Protocol;

/// <summary>What the service answers when it cannot do as asked (RFC 9457).</summary>
public abstract class ProblemTests(ServedApi api)
{
    [Theory]
    [InlineData("/nothing")]
    [InlineData("/v1")]
    [InlineData("/v1/nothing")]
    [InlineData("/v2/ingredients")]
    [InlineData("/problems/no-such-problem")]
    public async Task Get_UnknownAddress_Is404(string url)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, url);

        (await answer.ShouldBeProblemAsync(HttpStatusCode.NotFound))["type"]!.GetValue<string>().ShouldBe("/problems/not-found");
    }

    [Theory]
    [InlineData("POST", "/v1/ingredients")]
    [InlineData("DELETE", "/v1/ingredients/shea-butter")]
    [InlineData("PUT", "/v1/release")]
    [InlineData("POST", "/health/live")]
    public async Task Send_MethodThatTheAddressDoesNotTake_Is405WithThoseItTakes(string method, string url)
    {
        using var answer = await api.Client.SendAsync(new HttpMethod(method), url);

        await answer.ShouldBeProblemAsync(HttpStatusCode.MethodNotAllowed);
        answer.Content.Headers.Allow.Order().ShouldBe(["GET", "HEAD"]);
    }

    [Theory]
    [InlineData("text/html")]
    [InlineData("application/xml, text/csv;q=0.5")]
    [InlineData("application/json;q=0")]
    [InlineData("application/json;q=0, */*")]
    public async Task Get_NothingButJsonWouldDo_Is406(string accept)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, "/v1/ingredients/shea-butter", ("Accept", accept));

        await answer.ShouldBeProblemAsync(HttpStatusCode.NotAcceptable);
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8")]
    [InlineData("application/*")]
    [InlineData("application/json;charset=utf-8")]
    [InlineData("*/*;q=0.1")]
    public async Task Get_JsonWillDo_Is200(string accept)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, "/v1/ingredients/shea-butter", ("Accept", accept));

        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
    }

    [Fact]
    public async Task Get_TypeOfAnyProblem_IsAPageThatSaysWhatToDo()
    {
        foreach (var kind in ProblemKinds.All)
        {
            using var answer = await api.Client.SendAsync(HttpMethod.Get, kind.Type);
            answer.StatusCode.ShouldBe(HttpStatusCode.OK, kind.Slug);
            answer.Content.Headers.ContentType!.MediaType.ShouldBe("text/html");
            var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
            page.ShouldContain(kind.Meaning);
            page.ShouldContain(kind.NextStep);
        }
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteProblemTests(SqliteApi api) : ProblemTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlProblemTests(PostgreSqlApi api) : ProblemTests(api);
