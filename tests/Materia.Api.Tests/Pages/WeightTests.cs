using System.Text.Json;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Pages;

/// <summary>How much a page brings over the wire, and how soon the formula can be worked on over a phone's network.</summary>
[Collection(nameof(SqliteApi))]
public sealed class WeightTests(SqliteApi api, TestBrowser browser) : PageTests(api, browser)
{
    private const int MostBytes = 300_000;

    // The usual figures for a 4G phone in browsers' own tools: 150 ms round trip, 1.6 Mbit/s down, 750 kbit/s up.
    private static readonly Dictionary<string, object> FourG = new() { ["offline"] = false, ["latency"] = 150, ["downloadThroughput"] = 204_800, ["uploadThroughput"] = 96_000 };

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task Any_WithEverythingItLoads_WeighsUnder300Kilobytes(string path)
    {
        var page = await OpenAsync(path);
        var bytes = await page.EvaluateAsync<long>("[...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')].reduce((sum, e) => sum + e.transferSize, 0)");

        bytes.ShouldBeInRange(1000, MostBytes);
    }

    [Fact]
    public async Task Formula_OverAPhonesNetwork_IsInteractiveWithinASecond()
    {
        // The first evaluation of a process compiles the code and prepares the release; a visitor pays for that once in its life.
        await OpenAsync(ExampleLink.Mask);
        var context = await Browser.NewContextAsync();
        var fresh = await context.NewPageAsync();
        var session = await context.NewCDPSessionAsync(fresh);
        await session.SendAsync("Network.enable");
        await session.SendAsync("Network.emulateNetworkConditions", FourG);
        await fresh.GotoAsync(Url(ExampleLink.Mask));
        var times = await fresh.EvaluateAsync<JsonElement>("(() => { const n = performance.getEntriesByType('navigation')[0]; return { interactive: n.domInteractive, ready: n.domContentLoadedEventEnd }; })()");
        TestContext.Current.SendDiagnosticMessage("interactive {0} ms, scripts run {1} ms", times.GetProperty("interactive"), times.GetProperty("ready"));

        // The form works as soon as it is parsed; completion and live figures once the modules have run, which is asked for here.
        times.GetProperty("ready").GetDouble().ShouldBeLessThan(1000);
        await context.CloseAsync();
    }
}
