using System.Text.Json;
using Materia.Api.Tests.Hosting;
using Microsoft.Playwright;

namespace Materia.Api.Tests.Pages;

/// <summary>Every page on a phone and on a desk, in light and dark: nothing to scroll sideways, nothing that axe-core finds serious, no error.</summary>
[Collection(nameof(SqliteApi))]
public sealed class LookTests(SqliteApi api, TestBrowser browser) : PageTests(api, browser)
{
    private static readonly string Axe = File.ReadAllText(Repository.File("tests/Materia.Api.Tests/Pages/axe/axe.min.js"));

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task Any_OnAPhoneAndADesk_FitsAndIsAccessible(string path)
    {
        foreach (var (width, scheme) in new[] { (390, ColorScheme.Light), (390, ColorScheme.Dark), (1280, ColorScheme.Light), (1280, ColorScheme.Dark) })
        {
            // Only the scan's own script needs the policy out of the way; JourneyTests run under it.
            var page = await OpenAsync(path, new() { ViewportSize = new() { Width = width, Height = 844 }, ColorScheme = scheme, BypassCSP = true });
            (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).ShouldBeLessThanOrEqualTo(width);
            await page.EvaluateAsync(Axe);
            var found = await page.EvaluateAsync<JsonElement>("async () => (await axe.run(document)).violations.filter(v => ['serious', 'critical'].includes(v.impact)).map(v => v.id + ': ' + v.nodes.map(n => n.html).join(' | '))");
            found.EnumerateArray().Select(v => v.GetString()).ShouldBeEmpty($"{path} at {width} px, {scheme}");
            await KeepAsync(page, $"{Name(path)}-{width}-{scheme.ToString().ToLowerInvariant()}");
            await page.Context.CloseAsync();
        }

        Errors.ShouldBeEmpty();
    }

    private static string Name(string path) => path == "/" ? "home" : string.Join('-', path.Split('?')[0].Split('/', StringSplitOptions.RemoveEmptyEntries)) + (path.Contains('?') ? "-asked" : "");
}
