namespace Materia.Chemistry.Melting;

/// <summary>What one ingredient brings to the melting of a blend.</summary>
public sealed record IngredientSpecies
{
    /// <summary>The species with their amounts [mol per gram of the ingredient]; liquid ones included.</summary>
    public required IReadOnlyList<(PureSpecies Species, double MolesPerGram)> Species { get; init; }

    /// <summary>The species at the soft end of the ingredient's spread; <see langword="null"/> when nothing tells of one.</summary>
    public IReadOnlyList<(PureSpecies Species, double MolesPerGram)>? Softest { get; init; }

    /// <summary>The species at the firm end of the ingredient's spread; <see langword="null"/> when nothing tells of one.</summary>
    public IReadOnlyList<(PureSpecies Species, double MolesPerGram)>? Firmest { get; init; }

    /// <summary>True for a clay, powder or starch: mass, but no part of the fat phase.</summary>
    public bool IsFiller { get; init; }

    /// <summary>Why nothing is known of its melting; <see langword="null"/> when it is known.</summary>
    public string? Unknown { get; init; }

    /// <summary>What limits the description.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>How the species were found, in a few words.</summary>
    public required string Basis { get; init; }
}
