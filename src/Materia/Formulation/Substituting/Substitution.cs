namespace Materia.Formulation.Substituting;

/// <summary>Whole formulas that do without an ingredient, nearest first.</summary>
public sealed record Substitution
{
    /// <summary>The number of the release that the figures come from.</summary>
    public required int Release { get; init; }

    /// <summary>The formulas, by rising distance.</summary>
    public required IReadOnlyList<SubstitutionProposal> Proposals { get; init; }

    /// <summary>True when the time budget ended the search; the proposals are the best until then.</summary>
    public required bool Cut { get; init; }

    /// <summary>What has to be said of the whole answer, such as that nothing comes near; absent where nothing has.</summary>
    public string? Note { get; init; }

    /// <summary>What was taken otherwise than it was written, in sentences.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>The key of the method of the distance.</summary>
    public required string Method { get; init; }

    /// <summary>What has to be kept in mind with the whole answer.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }
}

/// <summary>One formula that does without.</summary>
public sealed record SubstitutionProposal
{
    /// <summary>The whole formula at 100 %, as <c>POST /v1/evaluations</c> takes it.</summary>
    public required Formula Formula { get; init; }

    /// <summary>
    /// How far its figures are from the original's: the mean of their differences, each in steps that a user is likely to notice [1]; see the
    /// method. Below 1 a user will notice little.
    /// </summary>
    public required double Distance { get; init; }

    /// <summary>The figures of the original and of this formula.</summary>
    public required IReadOnlyList<FigureDifference> Differences { get; init; }

    /// <summary>What a user will notice, in one or two sentences.</summary>
    public required string Notice { get; init; }

    /// <summary>What to look at before making it.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }
}

/// <summary>A figure before and after.</summary>
/// <param name="Property">The figure, such as <c>solid-content at 20 Cel</c>.</param>
/// <param name="Before">The original's; <see langword="null"/> where it cannot be given.</param>
/// <param name="After">This formula's; <see langword="null"/> where it cannot be given.</param>
/// <param name="Unit">The UCUM code of the unit.</param>
/// <param name="Steps">The difference in steps that a user is likely to notice [1]; absent where one side is.</param>
public sealed record FigureDifference(string Property, double? Before, double? After, string Unit, double? Steps);
