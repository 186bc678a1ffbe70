using System.Data;
using System.Data.Common;
using Materia.Catalogue;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace Materia.Data;

/// <summary>The numbered releases of the catalogue in the database. A release is never changed once it is there.</summary>
public sealed class ReleaseStore(MateriaContext context)
{
    /// <summary>Reads the release with the greatest number, or <see langword="null"/> when none was published.</summary>
    public async Task<Release?> ReadCurrentAsync(CancellationToken cancellation)
    {
        var header = await CurrentRowAsync(cancellation);
        return header is null ? null : await ReadAsync(header, cancellation);
    }

    /// <summary>Reads the release with this number, or <see langword="null"/> when there is none.</summary>
    public async Task<Release?> ReadAsync(int number, CancellationToken cancellation)
    {
        var header = await context.Set<ReleaseRow>().AsNoTracking().SingleOrDefaultAsync(r => r.Number == number, cancellation);
        return header is null ? null : await ReadAsync(header, cancellation);
    }

    /// <summary>The current release's header, or <see langword="null"/> when none was published. Cheap enough to ask for often.</summary>
    public async Task<ReleaseHeader?> ReadCurrentHeaderAsync(CancellationToken cancellation) =>
        (await CurrentRowAsync(cancellation))?.ToHeader();

    /// <summary>The header of the release with this number, or <see langword="null"/> when there is none.</summary>
    public async Task<ReleaseHeader?> ReadHeaderAsync(int number, CancellationToken cancellation) =>
        (await context.Set<ReleaseRow>().AsNoTracking().SingleOrDefaultAsync(r => r.Number == number, cancellation))?.ToHeader();

    /// <summary>Where the current release came from, or <see langword="null"/> when none was published.</summary>
    public async Task<ReleaseOrigin?> ReadOriginAsync(CancellationToken cancellation) =>
        (await CurrentRowAsync(cancellation))?.Origin;

    /// <summary>The headers of all releases, the newest first.</summary>
    public async Task<IReadOnlyList<ReleaseHeader>> ListAsync(CancellationToken cancellation)
    {
        var rows = await context.Set<ReleaseRow>().AsNoTracking().OrderByDescending(r => r.Number).ToListAsync(cancellation);
        return rows.ConvertAll(r => r.ToHeader());
    }

    /// <summary>
    /// Publishes <paramref name="content"/> as the next release, in one transaction, or does nothing when the current release
    /// holds the same content. Publishers that come at once take turns.
    /// </summary>
    /// <param name="content">The whole content; its checks are done, the database's constraints only guard them.</param>
    /// <param name="origin">Where it comes from.</param>
    /// <param name="now">The time of publishing.</param>
    /// <param name="cancellation">Gives up; nothing of the release stays then.</param>
    /// <exception cref="DbException">A constraint refused a row, and its message names it; nothing of the release stays.</exception>
    public Task<PublishOutcome> PublishAsync(
        CatalogueContent content, ReleaseOrigin origin, DateTimeOffset now, CancellationToken cancellation) =>
        PublishAsync(content, origin, replaceCuration: true, now, cancellation);

    /// <summary>
    /// Publishes the seed files' content at a start of the service: as <see cref="PublishAsync(CatalogueContent, ReleaseOrigin, DateTimeOffset, CancellationToken)"/>,
    /// but a curator's release is left as the current one.
    /// </summary>
    /// <param name="content">The seed files' content.</param>
    /// <param name="now">The time of publishing.</param>
    /// <param name="cancellation">Gives up; nothing of the release stays then.</param>
    /// <exception cref="DbException">A constraint refused a row, and its message names it; nothing of the release stays.</exception>
    public Task<PublishOutcome> PublishSeedAtStartAsync(CatalogueContent content, DateTimeOffset now, CancellationToken cancellation) =>
        PublishAsync(content, ReleaseOrigin.Seed, replaceCuration: false, now, cancellation);

    private async Task<PublishOutcome> PublishAsync(
        CatalogueContent content, ReleaseOrigin origin, bool replaceCuration, DateTimeOffset now, CancellationToken cancellation)
    {
        var checksum = CatalogueJson.Checksum(content);
        await using var transaction = await context.Database.BeginTransactionAsync(IsolationLevel.ReadCommitted, cancellation);
        await context.LockPublishingAsync(cancellation);
        var current = await CurrentRowAsync(cancellation);
        if (current is not null && current.Checksum == checksum)
        {
            return new PublishOutcome(current.Number, PublishAction.Unchanged);
        }

        if (current is { Origin: ReleaseOrigin.Curation } && !replaceCuration)
        {
            return new PublishOutcome(current.Number, PublishAction.HeldBack);
        }

        var number = (current?.Number ?? 0) + 1;
        await ReleaseWriting.WriteAsync(context, number, content, checksum, origin, now, cancellation);
        await transaction.CommitAsync(cancellation);
        return new PublishOutcome(number, PublishAction.Published);
    }

    private Task<ReleaseRow?> CurrentRowAsync(CancellationToken cancellation) =>
        context.Set<ReleaseRow>().AsNoTracking().OrderByDescending(r => r.Number).FirstOrDefaultAsync(cancellation);

    private async Task<Release> ReadAsync(ReleaseRow header, CancellationToken cancellation)
    {
        var content = await new ReleaseReading(context, header.Number).ReadAsync(cancellation);
        return new Release(header.Number, header.Published, header.Checksum, content);
    }
}
