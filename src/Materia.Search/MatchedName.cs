using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Search;

/// <summary>A name or number that the text matched.</summary>
/// <param name="Text">The name as it is written.</param>
/// <param name="Kind">What sort of name it is.</param>
/// <param name="Language">Its language as a BCP 47 tag, where it has one.</param>
/// <param name="How">How the text matched it: as well as the least well matched word.</param>
public sealed record MatchedName(string Text, MatchedNameKind Kind, string? Language, MatchDegree How);

/// <summary>How text matches a name.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<MatchDegree>))]
public enum MatchDegree
{
    /// <summary>The typed words are words of the name, or the typed text is the whole name; case and accents apart, and words apart that say of what kind or quality the material is.</summary>
    Exact,

    /// <summary>The last typed word begins a word of the name.</summary>
    Prefix,

    /// <summary>With a typing error forgiven, or by its sound.</summary>
    Fuzzy,
}
