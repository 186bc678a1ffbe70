using Materia.Api.Tests.Hosting;
using Microsoft.Playwright;

namespace Materia.Api.Tests.Pages;

/// <summary>What tests of pages in a browser share: a page that notes every error, the addresses to visit, and screenshots kept for the eye.</summary>
public abstract class PageTests(SqliteApi api, TestBrowser browser) : IClassFixture<TestBrowser>
{
    /// <summary>A page of each sort.</summary>
    public static TheoryData<string> Everywhere { get; } =
    [
        "/", "/ingredients?text=shea&meltingFrom=20", "/ingredients/shea-butter", "/ingredients/lavender-oil", "/formula", ExampleLink.Mask,
        "/compare?ids=shea-butter,mango-butter,beeswax,cocoa-butter", "/sources", "/sources/svo-compilation", "/lessons", "/lessons/iodine-value",
    ];

    /// <summary>The browser.</summary>
    protected IBrowser Browser => browser.Browser;

    /// <summary>What the browser complained of.</summary>
    protected List<string> Errors { get; } = [];

    /// <summary>Opens a page.</summary>
    protected async Task<IPage> OpenAsync(string path, BrowserNewContextOptions? options = null)
    {
        var context = await Browser.NewContextAsync(options ?? new());
        var page = await context.NewPageAsync();
        page.Console += (_, message) => Errors.AddRange(message.Type is "error" or "warning" ? [message.Text] : []);
        page.PageError += (_, error) => Errors.Add(error);
        var answer = await page.GotoAsync(Url(path));
        answer!.Status.ShouldBe(200);
        return page;
    }

    /// <summary>The whole address.</summary>
    protected string Url(string path) => new Uri(api.Client.BaseAddress!, path).ToString();

    /// <summary>Keeps a picture below <c>artifacts/pages</c>.</summary>
    protected static Task KeepAsync(IPage page, string name) =>
        page.ScreenshotAsync(new() { Path = Repository.File($"artifacts/pages/{name}.png"), FullPage = true });
}
