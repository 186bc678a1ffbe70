using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Pages;

/// <summary>Pages over HTTP: what browsers get and what programs get.</summary>
[Collection(nameof(SqliteApi))]
public sealed class PageAnswerTests(SqliteApi api)
{
    private const string Browser = "text/html,application/xhtml+xml,*/*;q=0.8";

    [Theory]
    [InlineData("/nothing")]
    [InlineData("/ingredients/shea-buter")]
    [InlineData("/sources/none")]
    [InlineData("/lessons/none")]
    public async Task Unknown_ForABrowser_IsAFriendlyPage(string url)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, url, ("Accept", Browser));
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        answer.StatusCode.ShouldBe(HttpStatusCode.NotFound);
        answer.Content.Headers.ContentType!.MediaType.ShouldBe("text/html");
        text.ShouldContain("There is nothing here");
        text.Contains("/ingredients/shea-butter", StringComparison.Ordinal).ShouldBe(url.Contains("shea"));
    }

    [Theory]
    [InlineData("/v1/nothing", Browser)]
    [InlineData("/nothing", "application/json")]
    public async Task Unknown_ForAProgram_IsAProblem(string url, string accept)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, url, ("Accept", accept));

        await answer.ShouldBeProblemAsync(HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task Any_Page_AllowsNothingInline()
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, "/formula?utm=x", ("Accept", Browser));

        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
        answer.Headers.GetValues("Content-Security-Policy").Single().ShouldNotContain("unsafe");
        (await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).ShouldNotContain(" style=");
    }

    [Fact]
    public async Task Asset_OfAPage_MayBeKeptForEver()
    {
        var page = await api.Client.GetStringAsync("/", TestContext.Current.CancellationToken);
        var url = "/assets/" + page.Split("/assets/")[1].Split('"')[0];
        using var answer = await api.Client.SendAsync(HttpMethod.Get, url);

        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
        answer.Headers.CacheControl!.ToString().ShouldContain("immutable");
    }

    [Fact]
    public async Task Search_ThatCannotBeRead_SaysWhyOnThePage()
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, "/ingredients?meltingFrom=warm", ("Accept", Browser));

        answer.StatusCode.ShouldBe(HttpStatusCode.BadRequest);
        (await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).ShouldContain("is not a range");
    }
}
