using Materia.Api.Tests.Hosting;
using Microsoft.Playwright;

namespace Materia.Api.Tests.Documents;

/// <summary>The documentation page in a real browser.</summary>
[Collection(nameof(SqliteApi))]
public sealed class SwaggerPageTests(SqliteApi api)
{
    private const string Variable = "MATERIA_TEST_BROWSER";

    // The flags keep Chromium from looking for a sandbox, a graphics card or servers of its maker.
    private static readonly string[] Flags =
        ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    [Fact]
    public async Task Docs_InABrowser_ListsTheCallsAndTriesOneWithoutAnError()
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Browser(), Headless = true, Args = Flags });
        var page = await browser.NewPageAsync();
        var errors = new List<string>();
        var hosts = new HashSet<string>();
        page.Console += (_, message) => errors.AddRange(message.Type == "error" ? [message.Text] : []);
        page.PageError += (_, error) => errors.Add(error);
        page.Request += (_, request) => hosts.Add(new Uri(request.Url).Scheme is "data" or "blob" ? "inline" : new Uri(request.Url).Authority);

        await page.GotoAsync(new Uri(api.Client.BaseAddress!, "/").ToString());
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

    private static string Browser()
    {
        var path = Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } named ? named : "/usr/bin/chromium";
        File.Exists(path).ShouldBeTrue($"There is no browser at {path}. Install Chromium (Debian: apt-get install chromium), or set {Variable} to the program of a Chromium or Chrome.");
        return path;
    }
}
