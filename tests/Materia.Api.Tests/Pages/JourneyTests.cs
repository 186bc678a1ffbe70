using Materia.Api.Tests.Hosting;
using Microsoft.Playwright;

namespace Materia.Api.Tests.Pages;

/// <summary>From a search to a printed formula, as people go.</summary>
[Collection(nameof(SqliteApi))]
public sealed class JourneyTests(SqliteApi api, TestBrowser browser) : PageTests(api, browser)
{
    [Fact]
    public async Task Visitor_SearchesReadsFormulatesAndPrints_WithoutAnError()
    {
        var page = await OpenAsync("/");
        await page.GetByRole(AriaRole.Combobox, new() { Name = "Name, INCI name or CAS number" }).FillAsync("shea butter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Search" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Shea butter", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Put it in a formula" }).ClickAsync();
        await page.Locator("#percent-0").FillAsync("60");
        await page.Locator("#add").FillAsync("sunfl");
        await page.GetByRole(AriaRole.Option, new() { Name = "Sunflower oil", Exact = true }).ClickAsync();
        await page.Locator("#percent-1").FillAsync("40");
        await page.GetByRole(AriaRole.Heading, new() { Name = "How it melts" }).WaitForAsync();
        await page.EmulateMediaAsync(new() { Media = Media.Print });

        (await page.Locator("header.top").IsVisibleAsync()).ShouldBeFalse();
        (await page.Locator(".declaration").InnerTextAsync()).ShouldContain("Butyrospermum Parkii Butter, Helianthus Annuus Seed Oil");
        (await page.PdfAsync()).Length.ShouldBeGreaterThan(10_000);
        Errors.ShouldBeEmpty();
        await KeepAsync(page, "journey-print");
    }

    [Fact]
    public async Task Keyboard_Alone_AddsALineGivesItsShareAndReachesTheFigures()
    {
        var page = await OpenAsync("/formula");
        await page.Keyboard.PressAsync("Tab");
        (await page.EvaluateAsync<string>("document.activeElement.className")).ShouldBe("skip");
        await TabToAsync(page, "#add");
        await page.Keyboard.TypeAsync("cocoa butt");
        await page.GetByRole(AriaRole.Option).First.WaitForAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("#percent-0").WaitForAsync();
        await Assertions.Expect(page.Locator("#percent-0")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("100");
        await page.Keyboard.PressAsync("Enter");
        await page.GetByRole(AriaRole.Heading, new() { Name = "At a glance" }).WaitForAsync();

        (await page.Locator(".linename").InnerTextAsync()).ShouldBe("Cocoa butter");
        Errors.ShouldBeEmpty();
    }

    [Fact]
    public async Task LinkOpenedAnew_GivesTheSameFigures()
    {
        var first = await OpenAsync(ExampleLink.Mask);
        await first.Locator("#percent-0").FillAsync("28");
        await Assertions.Expect(first.Locator("#balance")).ToContainTextAsync("74 %");
        var figures = await first.Locator("#results").InnerTextAsync();
        var second = await OpenAsync(new Uri(first.Url).PathAndQuery);

        (await second.Locator("#percent-0").InputValueAsync()).ShouldBe("28");
        (await second.Locator("#results").InnerTextAsync()).ShouldBe(figures);
        Errors.ShouldBeEmpty();
    }

    private static async Task TabToAsync(IPage page, string selector)
    {
        for (var presses = 0; presses < 40; presses++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.Locator(selector).EvaluateAsync<bool>("e => e === document.activeElement"))
            {
                return;
            }
        }

        throw new InvalidOperationException($"{selector} is not reached by the keyboard.");
    }
}
