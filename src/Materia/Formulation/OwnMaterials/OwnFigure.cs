using Materia.Catalogue;

namespace Materia.Formulation.OwnMaterials;

/// <summary>A figure of the maker's own material, in the shape of a stored figure: a value, a range, or both.</summary>
public sealed record OwnFigure
{
    /// <summary>The value; another name for <see cref="Typical"/>.</summary>
    public decimal? Value { get; init; }

    /// <summary>The lower end of the range.</summary>
    public decimal? Low { get; init; }

    /// <summary>The usual value.</summary>
    public decimal? Typical { get; init; }

    /// <summary>The upper end of the range.</summary>
    public decimal? High { get; init; }

    /// <summary>The UCUM code of the unit, the one that the catalogue keeps the property in.</summary>
    public string? Unit { get; init; }

    /// <summary>The conditions of measurement, where the property depends on them.</summary>
    public Conditions? At { get; init; }
}
