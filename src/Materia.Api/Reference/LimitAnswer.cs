using Materia.Catalogue.Regulated;

namespace Materia.Api.Reference;

/// <summary>The limits that were asked for.</summary>
public sealed record LimitAnswer
{
    /// <summary>How many there are.</summary>
    public required int Total { get; init; }

    /// <summary>The id of the ingredient that the substance was read as, where it was one.</summary>
    public string? Ingredient { get; init; }

    /// <summary>What of the substance or ingredient the limits name; empty where no substance was asked for.</summary>
    public IReadOnlyList<NamedSubstance> Named { get; init; } = [];

    /// <summary>The name nearest to a substance that no limit names.</summary>
    public IReadOnlyList<string> DidYouMean { get; init; } = [];

    /// <summary>The limits, in the order of the table.</summary>
    public required IReadOnlyList<Limit> Items { get; init; }
}
