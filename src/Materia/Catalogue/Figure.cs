namespace Materia.Catalogue;

/// <summary>One statement of a property: a value, a range, or one end of a range, in the property's unit.</summary>
public sealed record Figure : Statement
{
    /// <summary>The property.</summary>
    public required Property Property { get; init; }

    /// <summary>The lower end of the range, where one is known.</summary>
    public decimal? Low { get; init; }

    /// <summary>The value of one sample or the usual value, where one is known.</summary>
    public decimal? Typical { get; init; }

    /// <summary>The upper end of the range, where one is known.</summary>
    public decimal? High { get; init; }

    /// <summary>The UCUM code of the unit; it is the one unit of the property, see <see cref="PropertyDefinition"/>.</summary>
    public required string Unit { get; init; }

    /// <summary>The conditions of measurement, where the property depends on them.</summary>
    public Conditions? At { get; init; }

    /// <summary>Marks the statement that computations use where several of the same property and conditions stand side by side.</summary>
    public bool Used { get; init; }

    /// <summary>The value to compute with: the typical value, else the middle of the range, else the one end that is known.</summary>
    public decimal Central() => Typical ?? (Low is { } low && High is { } high ? (low + high) / 2 : Low ?? High ?? 0);

    /// <summary>The least value that the statement allows for.</summary>
    public decimal Least() => Low ?? Typical ?? High ?? 0;

    /// <summary>The greatest value that the statement allows for.</summary>
    public decimal Greatest() => High ?? Typical ?? Low ?? 0;
}

/// <summary>Conditions of measurement.</summary>
public sealed record Conditions
{
    /// <summary>The temperature of the material [Cel].</summary>
    public decimal? Temperature { get; init; }

    /// <summary>For a relative density: the temperature of the water it is compared with [Cel].</summary>
    public decimal? WaterTemperature { get; init; }
}
