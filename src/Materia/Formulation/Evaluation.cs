using System.Collections.Frozen;
using System.Text.Json.Serialization;
using Materia.Formulation.Sections;

namespace Materia.Formulation;

/// <summary>What can be said of a formula on one release of the catalogue. Each section asked for stands under its own name.</summary>
public sealed record Evaluation
{
    /// <summary>What stands with every evaluation.</summary>
    public const string Caution =
        "These figures are a drafting aid. Before a product is sold or given away, have a qualified safety assessor judge it and follow the law of the market.";

    /// <summary>The number of the release that the figures come from.</summary>
    public required int Release { get; init; }

    /// <summary>The formula's title.</summary>
    public string? Title { get; init; }

    /// <summary>The key of what the product is for.</summary>
    public string? Use { get; init; }

    /// <summary>The market.</summary>
    public Market? Market { get; init; }

    /// <summary>What has to be kept in mind with the whole answer.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>The results by section, in the order of <see cref="EvaluationSections.All"/>.</summary>
    [JsonIgnore]
    public IReadOnlyDictionary<EvaluationSection, object> Results { get; init; } = FrozenDictionary<EvaluationSection, object>.Empty;

    /// <summary>The result of <paramref name="section"/>, or <see langword="null"/> when it was not asked for.</summary>
    public T? Of<T>(EvaluationSection<T> section)
        where T : class => Results.TryGetValue(section, out var result) ? (T)result : null;
}
