using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>One thing to know about working with an ingredient or keeping it.</summary>
public sealed record HandlingNote : Statement
{
    /// <summary>What the note is about.</summary>
    public required HandlingTopic Topic { get; init; }

    /// <summary>The phase that the ingredient goes into; given on a note about the phase, and on no other.</summary>
    public ProcessPhase? Phase { get; init; }

    /// <summary>The note, as a sentence that says what to do.</summary>
    public required string Text { get; init; }
}

/// <summary>What a note on handling is about.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<HandlingTopic>))]
public enum HandlingTopic
{
    /// <summary>Which phase it goes into, and why there.</summary>
    Phase,

    /// <summary>How it is wetted, dissolved or dispersed.</summary>
    Dispersing,

    /// <summary>What it must not meet, or what it needs beside it.</summary>
    Compatibility,

    /// <summary>How it is kept before use.</summary>
    Storage,
}

/// <summary>The phases of making, by when an ingredient goes in.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<ProcessPhase>))]
public enum ProcessPhase
{
    /// <summary>Melted with the fats and waxes.</summary>
    Melt,

    /// <summary>A liquid oil that is warmed with, or stirred into, the melted fats.</summary>
    Oil,

    /// <summary>Dissolved or dispersed in the water, hot or cold.</summary>
    Water,

    /// <summary>Stirred in below about 45 °C, since it is volatile or does not bear heat.</summary>
    CoolDown,

    /// <summary>A powder sifted and stirred in.</summary>
    Powder,
}
