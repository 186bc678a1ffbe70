using System.Collections.Frozen;
using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Materia.Api.Http;
using Materia.Api.Ingredients;
using Materia.Api.Reference;
using Materia.Catalogue;
using Materia.Search;

namespace Materia.Api.Serving;

/// <summary>One release with everything that requests need of it, made once and never changed. A request takes it at its start and keeps it to its end.</summary>
public sealed class ServedRelease
{
    private static readonly string Build = typeof(ServedRelease).Module.ModuleVersionId.ToString("N");

    private readonly byte[] entityTagSeed;
    private readonly string cacheControl;
    private readonly FrozenDictionary<string, Representation> records;

    /// <summary>Makes what requests need of <paramref name="release"/>.</summary>
    /// <param name="release">The catalogue.</param>
    /// <param name="index">The index of the same release.</param>
    /// <param name="inventory">The inventory of names, where one was imported.</param>
    /// <param name="cacheSeconds">How long a client may keep an answer [s].</param>
    public ServedRelease(Release release, IngredientIndex index, ServedInventory? inventory, int cacheSeconds)
    {
        Release = release;
        Index = index;
        Inventory = inventory;
        Number = release.Number.ToString(CultureInfo.InvariantCulture);
        Date = release.Published.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        cacheControl = string.Create(CultureInfo.InvariantCulture, $"public, max-age={cacheSeconds}");

        // The build takes part because another build may write the same release differently.
        entityTagSeed = Encoding.UTF8.GetBytes($"{Build} {Number} {release.Checksum} {inventory?.Inventory.Checksum} ");
        Summaries = release.Content.Ingredients.ToFrozenDictionary(i => i.Id, IngredientSummary.Of, StringComparer.Ordinal);
        Resting = RestingStatements.Of(release);
        records = release.Content.Ingredients.ToFrozenDictionary(
            i => i.Id,
            i => Represent(IngredientEndpoints.Path(i.Id), JsonSerializer.SerializeToUtf8Bytes(IngredientRecord.Of(i, release), ApiJson.Options)),
            StringComparer.Ordinal);
    }

    /// <summary>The catalogue.</summary>
    public Release Release { get; }

    /// <summary>The index of the same release.</summary>
    public IngredientIndex Index { get; }

    /// <summary>The inventory of names; <see langword="null"/> when none was imported.</summary>
    public ServedInventory? Inventory { get; }

    /// <summary>Each ingredient in short, by id.</summary>
    public FrozenDictionary<string, IngredientSummary> Summaries { get; }

    /// <summary>What rests on each source.</summary>
    public RestingStatements Resting { get; }

    /// <summary>The release's number as the <c>Materia-Release</c> header gives it.</summary>
    public string Number { get; }

    /// <summary>The day it was published (UTC) as the <c>Materia-Release-Date</c> header gives it.</summary>
    public string Date { get; }

    /// <summary>The answer with an ingredient's whole record, made beforehand; <see langword="null"/> when there is no such id.</summary>
    public Representation? FindRecord(string id) => records.GetValueOrDefault(id);

    /// <summary>Makes the answer at <paramref name="url"/>. Release, inventory, build and URL decide every byte of a read, so they make its entity tag.</summary>
    /// <param name="url">Path and query as they were asked for.</param>
    /// <param name="body">The text in UTF-8.</param>
    /// <param name="mediaType">What it is.</param>
    public Representation Represent(string url, byte[] body, string mediaType = "application/json") => new(body, new EntityTags(TagStem(url)), cacheControl, mediaType);

    private string TagStem(string url)
    {
        var length = entityTagSeed.Length + Encoding.UTF8.GetByteCount(url);
        Span<byte> text = length <= 1024 ? stackalloc byte[length] : new byte[length];
        entityTagSeed.CopyTo(text);
        Encoding.UTF8.GetBytes(url, text[entityTagSeed.Length..]);
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(text, hash);

        // Twelve bytes: two different answers of one release would need some 10^14 URLs to share a tag.
        return Convert.ToHexStringLower(hash[..12]);
    }

    /// <summary>Hands the request's release to an endpoint that asks for it; <see cref="ReleaseHeaders"/> put it there.</summary>
    public static ValueTask<ServedRelease?> BindAsync(HttpContext context, ParameterInfo parameter) =>
        ValueTask.FromResult(context.Features.Get<ServedRelease>());
}
