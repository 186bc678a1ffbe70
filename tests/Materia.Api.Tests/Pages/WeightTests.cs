using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Pages;

/// <summary>How much a page brings over the wire.</summary>
[Collection(nameof(SqliteApi))]
public sealed class WeightTests(SqliteApi api, TestBrowser browser) : PageTests(api, browser)
{
    private const int MostBytes = 300_000;

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task Any_WithEverythingItLoads_WeighsUnder300Kilobytes(string path)
    {
        var page = await OpenAsync(path);
        var bytes = await page.EvaluateAsync<long>("[...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')].reduce((sum, e) => sum + e.transferSize, 0)");

        bytes.ShouldBeInRange(1000, MostBytes);
    }
}
