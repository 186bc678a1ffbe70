using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Formulation.Directing;

/// <summary>One sentence or two on one topic.</summary>
/// <param name="Topic">What it is about.</param>
/// <param name="Text">The advice.</param>
/// <param name="Evidence">How it was seen.</param>
/// <param name="Source">The key of the source.</param>
/// <param name="RestsOn">The sections whose results called for it; empty for what holds of every product of the use.</param>
/// <param name="Ingredients">The materials that called for it.</param>
public sealed record DirectionSentence(
    DirectionTopic Topic, string Text, Evidence Evidence, string Source, IReadOnlyList<string> RestsOn, IReadOnlyList<string> Ingredients)
{
    /// <summary>The key of trade knowledge among the sources.</summary>
    internal const string Trade = "trade-practice";

    internal static DirectionSentence Usual(DirectionTopic topic, string text) => new(topic, text, Evidence.CommonPractice, Trade, [], []);

    internal static DirectionSentence Because(DirectionTopic topic, string text, string section, params IReadOnlyList<string> ingredients) =>
        new(topic, text, Evidence.CommonPractice, Trade, [section], ingredients);
}

/// <summary>What a direction is about.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<DirectionTopic>))]
public enum DirectionTopic
{
    /// <summary>How much.</summary>
    Amount,

    /// <summary>On damp or dry hair or skin, and how it is put on.</summary>
    Application,

    /// <summary>How long it stays on.</summary>
    Duration,

    /// <summary>How it comes off.</summary>
    Removal,

    /// <summary>Whether it may stay on overnight.</summary>
    Overnight,

    /// <summary>How it is kept.</summary>
    Storage,

    /// <summary>When it is thrown away.</summary>
    Discard,
}
