namespace Materia.Api.Matches;

/// <summary>A measured fatty-acid profile.</summary>
public sealed record MatchRequest
{
    /// <summary>The acids with their shares of all fatty acids, together more than 0 and at most 105 %. An acid looked for and not found is given as 0.</summary>
    public IReadOnlyList<MeasuredAcid> FattyAcids { get; init; } = [];

    /// <summary>The id of the fat that it is said to be.</summary>
    public string? Claimed { get; init; }

    /// <summary>How many fats and mixtures are given, 1 to 20; 5 when it is left out.</summary>
    public int? Limit { get; init; }
}

/// <summary>The share of one acid.</summary>
public sealed record MeasuredAcid
{
    /// <summary>The symbol, such as <c>18:1n-9</c>, or <c>18:1</c> for the total of its isomers.</summary>
    public string? Acid { get; init; }

    /// <summary>The share of all fatty acids [%].</summary>
    public decimal? Percent { get; init; }
}
