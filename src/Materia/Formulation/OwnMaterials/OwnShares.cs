namespace Materia.Formulation.OwnMaterials;

/// <summary>The share of one fatty acid in the maker's own material.</summary>
public sealed record OwnFattyAcid
{
    /// <summary>The symbol, such as <c>18:1n-9</c>; a key of the fatty-acid table.</summary>
    public string? Acid { get; init; }

    /// <summary>The share [%].</summary>
    public decimal? Percent { get; init; }

    /// <summary>The lower end of its range [%].</summary>
    public decimal? Low { get; init; }

    /// <summary>The upper end of its range [%].</summary>
    public decimal? High { get; init; }
}

/// <summary>A constituent of the maker's own material.</summary>
public sealed record OwnConstituent
{
    /// <summary>Its name, or its CAS number with hyphens.</summary>
    public string? Substance { get; init; }

    /// <summary>The share [%].</summary>
    public decimal? Percent { get; init; }

    /// <summary>The lower end of its range [%].</summary>
    public decimal? Low { get; init; }

    /// <summary>The upper end of its range [%].</summary>
    public decimal? High { get; init; }
}

/// <summary>One material of a ready-made mixture.</summary>
public sealed record OwnPart
{
    /// <summary>The id of an ingredient of the catalogue.</summary>
    public string? Ingredient { get; init; }

    /// <summary>A material that the catalogue lacks; it has no parts of its own.</summary>
    public OwnMaterial? Own { get; init; }

    /// <summary>Its share of the mixture [%].</summary>
    public decimal? Percent { get; init; }
}
