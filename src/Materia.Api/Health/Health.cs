namespace Materia.Api.Health;

/// <summary>The answer to a probe.</summary>
public sealed record Health
{
    /// <summary><c>live</c> or <c>ready</c>.</summary>
    public required string Status { get; init; }

    /// <summary>The number of the release that is served.</summary>
    public int? Release { get; init; }
}
