using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Documents;

/// <summary>The documentation page in a real browser.</summary>
[Collection(nameof(SqliteApi))]
public sealed class SwaggerPageTests(SqliteApi api, TestBrowser browser) : IClassFixture<TestBrowser>
{
    [Fact]
    public async Task Docs_InABrowser_ListsTheCallsAndTriesOneWithoutAnError()
    {
        var page = await browser.Browser.NewPageAsync();
        var errors = new List<string>();
        var hosts = new HashSet<string>();
        page.Console += (_, message) => errors.AddRange(message.Type == "error" ? [message.Text] : []);
        page.PageError += (_, error) => errors.Add(error);
        page.Request += (_, request) => hosts.Add(new Uri(request.Url).Scheme is "data" or "blob" ? "inline" : new Uri(request.Url).Authority);

        await page.GotoAsync(new Uri(api.Client.BaseAddress!, "/docs").ToString());
        await page.Locator("#operations-Ingredients-SearchIngredients").WaitForAsync();
        (await page.TitleAsync()).ShouldBe("Materia API");
        await page.Locator("#operations-Release-GetRelease .opblock-summary-control").ClickAsync();
        await page.Locator("#operations-Release-GetRelease .try-out__btn").ClickAsync();
        await page.Locator("#operations-Release-GetRelease .execute").ClickAsync();
        var answer = page.Locator("#operations-Release-GetRelease .live-responses-table tbody .response-col_status").First;
        await answer.WaitForAsync();

        (await answer.InnerTextAsync()).ShouldContain("200");
        errors.ShouldBeEmpty();
        hosts.Except(["inline"]).ShouldBe([api.Client.BaseAddress!.Authority]);
    }
}
