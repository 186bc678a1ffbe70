using Materia.Api.Tests.Hosting;
using Microsoft.Playwright;

namespace Materia.Api.Tests.Pages;

/// <summary>The pages without script: forms and links alone.</summary>
[Collection(nameof(SqliteApi))]
public sealed class ScriptOffTests(SqliteApi api, TestBrowser browser) : PageTests(api, browser)
{
    private static readonly BrowserNewContextOptions Off = new() { JavaScriptEnabled = false };

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task Any_WithoutScript_RendersItsHeadingAndContent(string path)
    {
        var page = await OpenAsync(path, Off);

        (await page.Locator("h1").CountAsync()).ShouldBe(1);
        (await page.Locator("main").InnerTextAsync()).Length.ShouldBeGreaterThan(200);
    }

    [Fact]
    public async Task Formula_WithoutScript_TakesLinesChoicesAndRemovals()
    {
        var page = await OpenAsync("/formula", Off);
        await page.Locator("#add").FillAsync("butter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await page.Locator(".choices button").First.ClickAsync();
        await page.Locator("#add").FillAsync("beeswax");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        if (await page.Locator(".choices button").CountAsync() > 0)
        {
            await page.Locator(".choices button").First.ClickAsync();
        }

        await page.Locator("#percent-0").FillAsync("80");
        await page.Locator("#percent-1").FillAsync("x");
        await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).Last.ClickAsync();
        (await page.Locator("#faults").InnerTextAsync()).ShouldContain("not a number");
        await page.Locator("#percent-1").FillAsync("20,0");
        await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).Last.ClickAsync();
        (await page.Locator("#balance").InnerTextAsync()).ShouldContain("exactly 100 %");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove" }).First.ClickAsync();

        (await page.Locator(".line").CountAsync()).ShouldBe(1);
    }
}
