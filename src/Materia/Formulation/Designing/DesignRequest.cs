using Materia.Catalogue;
using Materia.Formulation.Optimising;

namespace Materia.Formulation.Designing;

/// <summary>What a formula is wanted to be, and what it may be made of. Nothing is checked yet, so every member may be absent.</summary>
public sealed record DesignRequest
{
    /// <summary>The title of the formulas, at most 200 characters.</summary>
    public string? Title { get; init; }

    /// <summary>What the product is for: a key of the table of uses.</summary>
    public string? Use { get; init; }

    /// <summary>The market whose rules concern the maker; the European Union when left out.</summary>
    public Market? Market { get; init; }

    /// <summary>What it may be made of, 1 to 200 materials.</summary>
    public IReadOnlyList<PantryItem> Pantry { get; init; } = [];

    /// <summary>What its figures should be.</summary>
    public IReadOnlyList<DesignTarget> Targets { get; init; } = [];

    /// <summary>What a person says of hair, skin, choices or climate: keys of <c>GET /v1/needs</c>. They add targets, preferences and exclusions; a target of the request on the same figure takes the place of theirs.</summary>
    public IReadOnlyList<string> Needs { get; init; } = [];

    /// <summary>Bounds on the shares of materials and kinds.</summary>
    public IReadOnlyList<DesignConstraint> Constraints { get; init; } = [];

    /// <summary>How many materials it may have.</summary>
    public IngredientCount? Ingredients { get; init; }

    /// <summary>What must not come in, though the pantry holds it.</summary>
    public Exclusions? Exclude { get; init; }

    /// <summary>How many formulas to give, 1 to 10; 3 when left out.</summary>
    public int? Limit { get; init; }

    /// <summary>How long to search, over 0 and up to 10 [s]; 2 when left out.</summary>
    public decimal? TimeBudget { get; init; }
}

/// <summary>A figure that is aimed at: a value, or a range that may be open at one end.</summary>
public sealed record DesignTarget
{
    /// <summary>The property.</summary>
    public BlendProperty? Property { get; init; }

    /// <summary>The temperature [Cel]: for solid content −10 to 80, for viscosity 20, 25, 32, 40, 50, 60, 70 or 80, for density 0 to 100.</summary>
    public decimal? Temperature { get; init; }

    /// <summary>The acid, such as <c>18:1n-9</c>, or the chain, such as <c>18:1</c>; for the share of a fatty acid.</summary>
    public string? Acid { get; init; }

    /// <summary>The value aimed at, in the property's unit; met within half a noticeable step.</summary>
    public decimal? Value { get; init; }

    /// <summary>The lower end of the range.</summary>
    public decimal? Low { get; init; }

    /// <summary>The upper end of the range.</summary>
    public decimal? High { get; init; }

    /// <summary>How much it matters beside the others, over 0 and up to 100; 1 when left out.</summary>
    public decimal? Weight { get; init; }
}

/// <summary>Bounds on the share of one material, or on the sum of a kind.</summary>
public sealed record DesignConstraint
{
    /// <summary>The material: an ingredient's id or the maker's own name. Give this or <see cref="Kind"/>.</summary>
    public string? Ingredient { get; init; }

    /// <summary>The kind, all its materials added up.</summary>
    public IngredientKind? Kind { get; init; }

    /// <summary>The least share, 0 to 100 [%].</summary>
    public decimal? MinPercent { get; init; }

    /// <summary>The greatest share, 0 to 100 [%].</summary>
    public decimal? MaxPercent { get; init; }
}

/// <summary>How many materials a formula may have.</summary>
public sealed record IngredientCount
{
    /// <summary>The fewest, 1 to 50.</summary>
    public int? Min { get; init; }

    /// <summary>The most, 1 to 50; 8 when left out.</summary>
    public int? Max { get; init; }
}
