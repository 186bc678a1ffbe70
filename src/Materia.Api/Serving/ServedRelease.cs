using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Materia.Catalogue;

namespace Materia.Api.Serving;

/// <summary>One release with everything that requests need of it, made once and never changed. A request takes it at its start and keeps it to its end.</summary>
public sealed class ServedRelease
{
    private static readonly string Build = typeof(ServedRelease).Module.ModuleVersionId.ToString("N");

    private readonly byte[] entityTagSeed;

    /// <summary>Makes what requests need of <paramref name="release"/>.</summary>
    public ServedRelease(Release release)
    {
        Release = release;
        Number = release.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);
        Date = release.Published.UtcDateTime.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

        // The build takes part because another build may write the same release differently.
        entityTagSeed = Encoding.UTF8.GetBytes($"{Build} {Number} {release.Checksum} ");
    }

    /// <summary>The catalogue.</summary>
    public Release Release { get; }

    /// <summary>The release's number as the <c>Materia-Release</c> header gives it.</summary>
    public string Number { get; }

    /// <summary>The day it was published (UTC) as the <c>Materia-Release-Date</c> header gives it.</summary>
    public string Date { get; }

    /// <summary>
    /// What is the same in the entity tags of all codings of the answer at <paramref name="url"/>: release, build and URL
    /// decide every byte of a read.
    /// </summary>
    /// <param name="url">Path and query as they were asked for.</param>
    public string EntityTagStem(string url)
    {
        var length = entityTagSeed.Length + Encoding.UTF8.GetByteCount(url);
        Span<byte> text = length <= 1024 ? stackalloc byte[length] : new byte[length];
        entityTagSeed.CopyTo(text);
        Encoding.UTF8.GetBytes(url, text[entityTagSeed.Length..]);
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(text, hash);
        return Convert.ToHexStringLower(hash[..12]);
    }

    /// <summary>Hands the request's release to an endpoint that asks for it; <see cref="ReleaseHeaders"/> put it there.</summary>
    public static ValueTask<ServedRelease?> BindAsync(HttpContext context, ParameterInfo parameter) =>
        ValueTask.FromResult(context.Features.Get<ServedRelease>());
}
