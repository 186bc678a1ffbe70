using Materia.Formulation.Needs;

namespace Materia.Formulation.Designing;

/// <summary>Formulas made to targets, best first.</summary>
public sealed record Design
{
    /// <summary>The number of the release that the figures come from.</summary>
    public required int Release { get; init; }

    /// <summary>The formulas, each of other materials, by rising distance.</summary>
    public required IReadOnlyList<DesignProposal> Proposals { get; init; }

    /// <summary>True when the time budget ended the search; the proposals are the best until then.</summary>
    public required bool Cut { get; init; }

    /// <summary>What has to be said of the whole answer; absent where nothing has.</summary>
    public string? Note { get; init; }

    /// <summary>What follows from the needs of the request, each with its reason, source and grade; absent where it named none.</summary>
    public ResolvedNeeds? Needs { get; init; }

    /// <summary>What was taken otherwise than it was written, in sentences.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>The key of the method of the distance.</summary>
    public required string Method { get; init; }

    /// <summary>What has to be kept in mind with the whole answer.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }
}

/// <summary>One formula made to targets.</summary>
public sealed record DesignProposal
{
    /// <summary>The whole formula at 100 %, as <c>POST /v1/evaluations</c> takes it.</summary>
    public required Formula Formula { get; init; }

    /// <summary>How far it is from the targets: the mean of what lies outside, by weight, each in noticeable steps [1]; 0 when all are met.</summary>
    public required double Distance { get; init; }

    /// <summary>The targets, in the order given.</summary>
    public required IReadOnlyList<TargetResult> Targets { get; init; }

    /// <summary>What to look at before making it.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }
}

/// <summary>How a formula stands to a target.</summary>
/// <param name="Property">The figure, such as <c>solid-content at 20 Cel</c>.</param>
/// <param name="Low">The lower end of what was asked.</param>
/// <param name="High">The upper end of what was asked.</param>
/// <param name="Value">What the formula has; <see langword="null"/> where it cannot be given.</param>
/// <param name="Unit">The UCUM code of the unit.</param>
/// <param name="Met">Whether it lies in the range; for a single value, within half a noticeable step of it.</param>
/// <param name="Coverage">The share of the mass concerned that the value rests on, 0 to 1.</param>
public sealed record TargetResult(string Property, double? Low, double? High, double? Value, string Unit, bool Met, double Coverage);
