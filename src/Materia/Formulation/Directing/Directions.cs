using Materia.Formulation.Sections;
using Materia.Regulation.Cautioning;

namespace Materia.Formulation.Directing;

/// <summary>How the finished product is used and kept: drafts to be put into the maker's own words and tried out.</summary>
public sealed record Directions
{
    /// <summary>The key of the method.</summary>
    public const string MethodKey = "directions-by-use";

    /// <summary>The section <c>directions</c>.</summary>
    public static EvaluationSection<Directions> Section { get; } =
        new("directions", "How the finished product is used, by its use: how much, on what, how long, how to remove it, how to keep it, when to throw it away, and the cautions of this formula.", DirectionsDraft.Of);

    /// <summary>The key of the use.</summary>
    public string? Use { get; init; }

    /// <summary>The name of the use.</summary>
    public string? UseName { get; init; }

    /// <summary>The sentences, in the order of their topics.</summary>
    public required IReadOnlyList<DirectionSentence> Sentences { get; init; }

    /// <summary>The cautions of this formula that concern whoever uses it, as the section cautions has them.</summary>
    public required IReadOnlyList<CautionFinding> Cautions { get; init; }

    /// <summary>What is missing to say more.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>The key of the <see cref="Catalogue.Method"/>.</summary>
    public string Method { get; init; } = MethodKey;
}
