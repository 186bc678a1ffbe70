namespace Materia.Chemistry.Preserving;

/// <summary>A preservative, or a substance that helps one, in the formula.</summary>
public sealed record PreservativeFinding
{
    /// <summary>Its name on a label.</summary>
    public required string Name { get; init; }

    /// <summary>The components that bring it.</summary>
    public required IReadOnlyList<string> Ingredients { get; init; }

    /// <summary>Its share of the formula [%].</summary>
    public required ShareRange Percent { get; init; }

    /// <summary>Whether the law's list of preservatives names it; absent where there is no such list for the market.</summary>
    public bool? Listed { get; init; }

    /// <summary>The lowest pH at which it works, where one is known.</summary>
    public decimal? EffectiveFrom { get; init; }

    /// <summary>The highest pH at which it works, where one is known.</summary>
    public decimal? EffectiveTo { get; init; }

    /// <summary>Whether the formula's pH lies in that range as a whole; absent where it lies astride an end, or either is not known.</summary>
    public bool? FitsPh { get; init; }

    /// <summary>The pKa that the shares rest on; absent where the substance is no acid or none is held.</summary>
    public decimal? DissociationConstant { get; init; }

    /// <summary>The undissociated share at the formula's pH and both ends of its range, or where it was not given at 4 to 6.</summary>
    public IReadOnlyList<UndissociatedShare> Undissociated { get; init; } = [];

    /// <summary>How much of it stays in the water; absent without oil, or where no constant for such an oil is known.</summary>
    public OilPartition? Partition { get; init; }

    /// <summary>What else to know of it here.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}

/// <summary>The undissociated share of an acid at a pH.</summary>
/// <param name="Ph">The pH.</param>
/// <param name="Percent">The share of the acid that is not dissociated [%].</param>
/// <param name="OfFormula">The undissociated acid in the formula [%], salts counted as acid; absent where no factor from salt to acid is known.</param>
public sealed record UndissociatedShare(decimal Ph, double Percent, double? OfFormula);

/// <summary>How a preservative parts between oil and water.</summary>
/// <param name="Oil">The oil whose constant was taken, the nearer of the two that were measured.</param>
/// <param name="Constant">Concentration in that oil over that in water [1].</param>
/// <param name="OilToWater">Volume of oil over volume of water in the formula [1], by common densities.</param>
/// <param name="InWater">Concentration in the water phase [% w/v].</param>
/// <param name="Source">The key of the source of the constant.</param>
public sealed record OilPartition(string Oil, double Constant, double OilToWater, double InWater, string Source);
