using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>Where an ingredient's iodine or saponification value comes from.</summary>
internal enum TitrationBasis
{
    /// <summary>Worked out from its fatty acids.</summary>
    Composition,

    /// <summary>A stored measurement or specification.</summary>
    Measured,

    /// <summary>Nought by its chemical nature.</summary>
    Nature,
}

/// <summary>An ingredient's iodine or saponification value.</summary>
/// <param name="Value">The value and its range.</param>
/// <param name="Basis">Where it comes from.</param>
/// <param name="Stored">The stored figure, when measured.</param>
/// <param name="Note">What limits it; <see langword="null"/> when nothing does.</param>
internal sealed record Titration(Interval Value, TitrationBasis Basis, Figure? Stored = null, string? Note = null);
