using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>What is known of an ingredient's effect on hair or skin. Not a claim for a label.</summary>
public sealed record BodyNote : Statement
{
    /// <summary>What it is about.</summary>
    public required BodySubject Subject { get; init; }

    /// <summary>The finding with what was tested, as a sentence.</summary>
    public required string Text { get; init; }
}

/// <summary>What a note on effect is about.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<BodySubject>))]
public enum BodySubject
{
    /// <summary>The hair.</summary>
    Hair,

    /// <summary>The scalp.</summary>
    Scalp,

    /// <summary>The skin.</summary>
    Skin,

    /// <summary>The lips.</summary>
    Lips,

    /// <summary>The nails.</summary>
    Nails,
}
