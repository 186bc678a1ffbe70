using System.Diagnostics;
using System.Globalization;
using Materia.Data;
using Materia.Search;
using Materia.Seed;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Materia.Api.Serving;

/// <summary>Loads the release when the service starts, beside the server's own start, and tries again for as long as it takes.</summary>
public sealed class ReleaseLoading(
    IServiceScopeFactory scopes, CurrentRelease current, MateriaSettings settings, DatabaseSettings database, IServer server,
    IHostApplicationLifetime lifetime, TimeProvider time, ILogger<ReleaseLoading> log) : BackgroundService
{
    private readonly HashSet<SeedFault> toldFaults = [];

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var start = Stopwatch.GetTimestamp();
        for (var failures = 1; !await TryAsync(failures, stoppingToken); failures++)
        {
            await Task.Delay(current.Obstacle!.NextTry, time, stoppingToken);
        }

        await StartedAsync(stoppingToken);
        var served = current.Take()!;
        log.LogInformation(
            "Ready at {Url}: release {Release} of {Date} with {Count} ingredients, after {Seconds:0.0} s",
            server.Features.Get<IServerAddressesFeature>()?.Addresses.FirstOrDefault(), served.Number, served.Date,
            served.Release.Content.Ingredients.Count, Stopwatch.GetElapsedTime(start).TotalSeconds);
    }

    private async Task<bool> TryAsync(int failures, CancellationToken cancellation)
    {
        try
        {
            await using var scope = scopes.CreateAsyncScope();
            var release = await scope.ServiceProvider.GetRequiredService<ReleaseSource>().GetAsync(toldFaults, cancellation);
            var building = Task.Run(() => IngredientIndex.Build(release), cancellation);
            var inventory = await scope.ServiceProvider.GetRequiredService<InventoryStore>().ReadAsync(cancellation);
            var served = inventory is null ? null : new ServedInventory(inventory, release);
            current.Swap(new ServedRelease(release, await building, served, settings.CacheSeconds));
            return true;
        }
        catch (Exception fault) when (!cancellation.IsCancellationRequested)
        {
            var wait = BackOff.After(failures, Random.Shared);
            current.NotYet(new Obstacle(Reason(fault, failures), wait));

            // The message tells what is down; the stack would only fill the log once for each try.
            log.LogWarning("Not ready, try {Number} failed, next in {Seconds:0.0} s: {Type}: {Message}", failures, wait.TotalSeconds, fault.GetType().Name, fault.Message);
            return false;
        }
    }

    /// <summary>What anyone may read of a failure: drivers' messages name hosts and users and stay in the log.</summary>
    private string Reason(Exception fault, int failures) => fault is SeedRefusedException
        ? fault.Message
        : string.Create(CultureInfo.InvariantCulture, $"The {database.Provider} database cannot be used yet ({failures} tries so far); the service keeps trying. The log has the details.");

    private Task StartedAsync(CancellationToken cancellation)
    {
        var started = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        lifetime.ApplicationStarted.Register(started.SetResult);
        return started.Task.WaitAsync(cancellation);
    }
}
