using Microsoft.Playwright;

namespace Materia.Api.Tests.Hosting;

/// <summary>A real Chromium, started once for a class of tests.</summary>
public sealed class TestBrowser : IAsyncLifetime
{
    private const string Variable = "MATERIA_TEST_BROWSER";

    // The flags keep Chromium from looking for a sandbox, a graphics card or servers of its maker.
    private static readonly string[] Flags =
        ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private IPlaywright? playwright;

    /// <summary>The browser.</summary>
    public IBrowser Browser { get; private set; } = null!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        Browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Program(), Headless = true, Args = Flags });
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (Browser is not null)
        {
            await Browser.DisposeAsync();
        }

        playwright?.Dispose();
    }

    private static string Program()
    {
        var path = Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } named ? named : "/usr/bin/chromium";
        File.Exists(path).ShouldBeTrue($"There is no browser at {path}. Install Chromium (Debian: apt-get install chromium), or set {Variable} to the program of a Chromium or Chrome.");
        return path;
    }
}
