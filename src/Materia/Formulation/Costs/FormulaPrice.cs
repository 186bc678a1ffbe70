namespace Materia.Formulation.Costs;

/// <summary>What a material costs, as it was submitted.</summary>
public sealed record FormulaPrice
{
    /// <summary>The id of an ingredient of the catalogue.</summary>
    public string? Ingredient { get; init; }

    /// <summary>The name of one of the formula's own materials; stands in place of <c>ingredient</c>.</summary>
    public string? Own { get; init; }

    /// <summary>What <see cref="Per"/> costs, in <see cref="Currency"/>; not negative.</summary>
    public decimal? Price { get; init; }

    /// <summary>The ISO 4217 code of the currency, such as <c>EUR</c>; the same for all prices.</summary>
    public string? Currency { get; init; }

    /// <summary>How much that price buys.</summary>
    public PricedAmount? Per { get; init; }
}

/// <summary>The amount that a price buys: a mass or a volume with its unit.</summary>
public sealed record PricedAmount
{
    /// <summary>The mass, in <see cref="Unit"/>.</summary>
    public decimal? Mass { get; init; }

    /// <summary>The volume, in <see cref="Unit"/>; needs the density of the material and is approximate.</summary>
    public decimal? Volume { get; init; }

    /// <summary>For a mass <c>g</c>, <c>kg</c>, <c>mg</c>, <c>oz</c> or <c>lb</c>; for a volume <c>mL</c>, <c>L</c>, <c>[foz_us]</c> or <c>[foz_br]</c>.</summary>
    public string? Unit { get; init; }
}

/// <summary>Something that goes with each jar: the jar, its lid, a label, a box.</summary>
public sealed record FormulaPackaging
{
    /// <summary>What it is, at most 200 characters.</summary>
    public string? Name { get; init; }

    /// <summary>What <see cref="Pieces"/> of it cost, in <see cref="Currency"/>; not negative.</summary>
    public decimal? Price { get; init; }

    /// <summary>The ISO 4217 code of the currency, the same as that of the prices.</summary>
    public string? Currency { get; init; }

    /// <summary>How many pieces that price buys; 1 when left out.</summary>
    public int? Pieces { get; init; }
}
