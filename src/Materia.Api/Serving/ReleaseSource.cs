using Materia.Catalogue;
using Materia.Data;
using Materia.Seed;

namespace Materia.Api.Serving;

/// <summary>Gets the release to serve: brings the database up to date, publishes the seed data where they are new, and reads.</summary>
/// <param name="store">The stored releases.</param>
/// <param name="context">The database.</param>
/// <param name="settings">Where the seed data lies.</param>
/// <param name="time">The clock.</param>
/// <param name="log">Where the seed data's faults are told.</param>
public sealed class ReleaseSource(ReleaseStore store, MateriaContext context, MateriaSettings settings, TimeProvider time, ILogger<ReleaseSource> log)
{
    /// <summary>Gets the release. A second call with the same seed data changes nothing.</summary>
    /// <param name="told">The seed data's faults that the log holds already; those that are new are logged and added.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <exception cref="SeedRefusedException">The seed data has faults and the database holds no earlier release.</exception>
    public async Task<Release> GetAsync(ISet<SeedFault> told, CancellationToken cancellation)
    {
        // Reading some hundred files and bringing the database up to date take about as long; they need nothing of each other.
        var reading = Task.Run(() => SeedReader.Read(settings.SeedDirectory), cancellation);
        await MateriaDatabase.MigrateAsync(context, cancellation);
        var seed = await reading;
        foreach (var fault in seed.Faults.Where(told.Add))
        {
            log.LogError("Seed data: {Fault}", fault);
        }

        if (seed.Content is not { } content)
        {
            return await store.ReadCurrentAsync(cancellation) ?? throw new SeedRefusedException(seed.Faults.Count);
        }

        var outcome = await store.PublishSeedAtStartAsync(content, time.GetUtcNow(), cancellation);
        if (outcome.Action != PublishAction.Unchanged)
        {
            log.LogInformation("Seed data: {Action}, the current release is {Number}", outcome.Action, outcome.Number);
        }

        // Where the stored content is the very content in hand, as the outcome says, reading it back would give the same.
        return outcome.Action == PublishAction.HeldBack || await store.ReadHeaderAsync(outcome.Number, cancellation) is not { } header
            ? await store.ReadCurrentAsync(cancellation) ?? throw new SeedRefusedException(seed.Faults.Count)
            : new Release(header.Number, header.Published, header.Checksum, content);
    }
}
