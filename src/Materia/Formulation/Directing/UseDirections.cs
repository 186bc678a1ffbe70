using System.Collections.Frozen;

namespace Materia.Formulation.Directing;

/// <summary>How products of one use are used; common practice throughout.</summary>
/// <param name="Use">The key of the use.</param>
/// <param name="Amount">How much.</param>
/// <param name="Application">On what, and how.</param>
/// <param name="Duration">How long.</param>
/// <param name="Removal">How it comes off.</param>
/// <param name="Overnight">Whether it may stay on overnight.</param>
internal sealed record UseDirections(string Use, string Amount, string Application, string Duration, string Removal, string Overnight)
{
    private static readonly FrozenDictionary<string, UseDirections> ByUse =
        HairDirections.All.Concat(FaceDirections.All).Concat(BodyDirections.All).ToFrozenDictionary(d => d.Use, StringComparer.Ordinal);

    /// <summary>The keys of the uses that have directions.</summary>
    public static IEnumerable<string> Uses => ByUse.Keys;

    /// <summary>The directions of a use, or <see langword="null"/>.</summary>
    public static UseDirections? Find(string use) => ByUse.GetValueOrDefault(use);

    /// <summary>The sentences.</summary>
    public IEnumerable<DirectionSentence> Sentences() =>
    [
        DirectionSentence.Usual(DirectionTopic.Amount, Amount),
        DirectionSentence.Usual(DirectionTopic.Application, Application),
        DirectionSentence.Usual(DirectionTopic.Duration, Duration),
        DirectionSentence.Usual(DirectionTopic.Removal, Removal),
        DirectionSentence.Usual(DirectionTopic.Overnight, Overnight),
    ];
}
