using Microsoft.Extensions.Primitives;

namespace Materia.Api.Http;

/// <summary>The strong entity tags of one answer: a stem that release, build and URL decide, and an ending for each coding.</summary>
/// <param name="stem">The part that all codings share; letters and digits only.</param>
public sealed class EntityTags(string stem)
{
    private readonly string[] tags = [.. ContentCoding.All.Select(coding => $"\"{stem}{coding.TagSuffix}\"")];

    /// <summary>The tag in this coding, with its quotes.</summary>
    public string Of(ContentCoding coding)
    {
        for (var i = 0; i < tags.Length; i++)
        {
            if (ReferenceEquals(ContentCoding.All[i], coding))
            {
                return tags[i];
            }
        }

        throw new ArgumentException("Not one of the codings.", nameof(coding));
    }

    /// <summary>
    /// The tag that the caller already holds, or <see langword="null"/> when it holds none that is still good. A tag of another
    /// coding counts: what the caller keeps under it is the same record. Compared weakly, as RFC 9110 section 13.1.2 asks.
    /// </summary>
    /// <param name="ifNoneMatch">The <c>If-None-Match</c> header.</param>
    /// <param name="present">The tag that a full answer would have, for a caller that asks with <c>*</c>.</param>
    public string? Held(StringValues ifNoneMatch, string present)
    {
        foreach (var line in ifNoneMatch)
        {
            foreach (var part in (line ?? "").Split(',', StringSplitOptions.TrimEntries))
            {
                if (part is "*")
                {
                    return present;
                }

                var tag = part.StartsWith("W/", StringComparison.Ordinal) ? part[2..] : part;
                if (Array.IndexOf(tags, tag) is >= 0 and var at)
                {
                    return tags[at];
                }
            }
        }

        return null;
    }
}
