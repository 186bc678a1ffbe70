using Materia.Catalogue;

namespace Materia.Regulation.Allergens;

/// <summary>How a formula stands to one fragrance allergen.</summary>
public sealed record AllergenFinding
{
    /// <summary>The key of the allergen; <c>GET /v1/allergens</c> has the whole of it.</summary>
    public required string Id { get; init; }

    /// <summary>The name that a label prints.</summary>
    public required string DeclarationName { get; init; }

    /// <summary>The share of the formula, all members together [%].</summary>
    public required Amount Amount { get; init; }

    /// <summary>The share above which the label must name it [%].</summary>
    public required decimal Threshold { get; init; }

    /// <summary>Whether the label must name it: the greatest share is above the threshold, and the rule is in force on the day asked for.</summary>
    public required bool Declared { get; init; }

    /// <summary>The day from which new products must name it, where the greatest share is above the threshold and the rule is not yet in force.</summary>
    public DateOnly? DeclaredFrom { get; init; }

    /// <summary>How many times the greatest share would go into the threshold, where it is below: 4 means a quarter of it.</summary>
    public decimal? TimesBelow { get; init; }

    /// <summary>Whether the entry is a natural oil or extract as a whole.</summary>
    public bool NaturalExtract { get; init; }

    /// <summary>What brings it, the largest first.</summary>
    public required IReadOnlyList<Contribution> Contributions { get; init; }

    /// <summary>Materials that may hold it besides, enough to pass the threshold, of which no statement says whether they do.</summary>
    public IReadOnlyList<string> NotExcludedIn { get; init; } = [];

    /// <summary>The market's rule, in sentences.</summary>
    public required string Rule { get; init; }

    /// <summary>The key of the instrument among the sources.</summary>
    public required string Instrument { get; init; }

    /// <summary>The entry in the instrument.</summary>
    public string? Entry { get; init; }

    /// <summary>How the entry was seen.</summary>
    public required Evidence Evidence { get; init; }
}
