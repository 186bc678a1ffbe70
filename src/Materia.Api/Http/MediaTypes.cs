using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace Materia.Api.Http;

/// <summary>The forms in which a call answers, as endpoint metadata, the usual one first.</summary>
/// <param name="Types">Media types without parameters.</param>
public sealed record OfferedTypes(IReadOnlyList<string> Types)
{
    /// <summary>What a call without this offers.</summary>
    public static OfferedTypes Json { get; } = new(["application/json"]);
}

/// <summary>Chooses among media types by the Accept header (RFC 9110 section 12.5.1).</summary>
public static class MediaTypes
{
    /// <summary>
    /// The type that the caller likes best: the most specific range that holds a type gives its quality, and among equals the one that
    /// is offered first is chosen. A header that cannot be read counts as none.
    /// </summary>
    /// <returns><see langword="null"/> when the caller accepts none of them.</returns>
    public static string? Choose(StringValues accept, IReadOnlyList<string> offered)
    {
        ArgumentNullException.ThrowIfNull(offered);
        if (accept.Count == 0 || accept is ["*/*"] || !MediaTypeHeaderValue.TryParseList(accept, out var ranges))
        {
            return offered[0];
        }

        string? best = null;
        double quality = 0;
        foreach (var type in offered)
        {
            var range = ranges.Where(r => Specificity(r, type) > 0).MaxBy(r => Specificity(r, type));
            if (range is not null && (range.Quality ?? 1) > quality)
            {
                (best, quality) = (type, range.Quality ?? 1);
            }
        }

        return best;
    }

    private static int Specificity(MediaTypeHeaderValue range, string type)
    {
        var name = range.MediaType.Value ?? "";
        return name.Equals(type, StringComparison.OrdinalIgnoreCase) ? 3
            : name.EndsWith("/*", StringComparison.Ordinal) && type.StartsWith(name[..^1], StringComparison.OrdinalIgnoreCase) ? 2
            : name == "*/*" ? 1
            : 0;
    }
}
