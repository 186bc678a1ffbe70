using Materia.Formulation.Optimising;

namespace Materia.Formulation.Substituting;

/// <summary>A formula and what it has to do without. Nothing is checked yet, so every member may be absent.</summary>
public sealed record SubstitutionRequest
{
    /// <summary>The formula as it is with everything in it.</summary>
    public Formula? Formula { get; init; }

    /// <summary>Ids of the ingredients to do without, or the maker's own names; 1 to 5, each on a line of the formula.</summary>
    public IReadOnlyList<string> Without { get; init; } = [];

    /// <summary>What may come in; the whole catalogue when it is left out. What is in the formula need not be named again.</summary>
    public IReadOnlyList<PantryItem>? Pantry { get; init; }

    /// <summary>Lines that keep their share, by place or material.</summary>
    public IReadOnlyList<LineChoice> Locked { get; init; } = [];

    /// <summary>What must not come in.</summary>
    public Exclusions? Exclude { get; init; }

    /// <summary>How many formulas to give, 1 to 10; 3 when left out.</summary>
    public int? Limit { get; init; }

    /// <summary>How long to search, over 0 and up to 10 [s]; 2 when left out.</summary>
    public decimal? TimeBudget { get; init; }
}
