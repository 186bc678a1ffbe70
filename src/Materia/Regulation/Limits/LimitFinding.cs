using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Limits;

/// <summary>How a formula stands to one limit.</summary>
public sealed record LimitFinding
{
    /// <summary>The key of the limit; <c>GET /v1/limits</c> has the whole of it. For limits that add up as ratios, the key of their group.</summary>
    public required string Id { get; init; }

    /// <summary>The substance or group as the instrument names it.</summary>
    public required string Substance { get; init; }

    /// <summary>The CAS number, where the limit is about one substance.</summary>
    public string? Cas { get; init; }

    /// <summary>How it stands.</summary>
    public required LimitStatus Status { get; init; }

    /// <summary>The share of the formula that counts towards the limit, in <see cref="Unit"/>.</summary>
    public required Amount Amount { get; init; }

    /// <summary>The limit, in <see cref="Unit"/>; absent where the instrument gives no number.</summary>
    public decimal? Limit { get; init; }

    /// <summary><c>%</c> by mass; <c>1</c> for a sum of ratios.</summary>
    public required string Unit { get; init; }

    /// <summary>What the share is counted as, where not as the substance itself.</summary>
    public string? ExpressedAs { get; init; }

    /// <summary>Whose rule it is. Verdicts of different bodies are never merged.</summary>
    public required Authority Authority { get; init; }

    /// <summary>What the rule is about.</summary>
    public required LimitKind Kind { get; init; }

    /// <summary>The key of the instrument among the sources.</summary>
    public required string Instrument { get; init; }

    /// <summary>The entry or table in the instrument.</summary>
    public string? Entry { get; init; }

    /// <summary>How the row was seen.</summary>
    public required Catalogue.Evidence Evidence { get; init; }

    /// <summary>The products that it binds, as the instrument words it, in short.</summary>
    public required string Scope { get; init; }

    /// <summary>The day from which new products must comply, where one is known.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Conditions that a share cannot show.</summary>
    public string? Conditions { get; init; }

    /// <summary>Words that the label must carry for this formula.</summary>
    public string? Warning { get; init; }

    /// <summary>What brings the substance, the largest first.</summary>
    public required IReadOnlyList<Contribution> Contributions { get; init; }

    /// <summary>The largest share of each of them that would pass, the others staying as they are; absent where there is no number to keep.</summary>
    public IReadOnlyList<LargestPassing> LargestPassing { get; init; } = [];

    /// <summary>The most that other materials may hold of it without saying so, in <see cref="Unit"/>; absent where all are accounted for.</summary>
    public decimal? NotExcluded { get; init; }

    /// <summary>Those materials.</summary>
    public IReadOnlyList<string> Unstated { get; init; } = [];

    /// <summary>What else must be known to read the verdict.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
