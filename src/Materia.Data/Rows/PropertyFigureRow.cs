using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A figure of a property of an ingredient.</summary>
internal sealed class PropertyFigureRow : IngredientStatementRow
{
    public PropertyFigureRow(RowPlace place, Figure figure)
        : base(place, figure)
    {
        if (figure.At is { Temperature: null, WaterTemperature: null })
        {
            throw new ArgumentException($"A figure of {place.Ingredient} has conditions that say nothing; leave 'at' out.", nameof(figure));
        }

        Property = figure.Property;
        Low = figure.Low;
        Typical = figure.Typical;
        High = figure.High;
        Unit = figure.Unit;
        Temperature = figure.At?.Temperature;
        WaterTemperature = figure.At?.WaterTemperature;
        Used = figure.Used;
    }

    /// <summary>For the reader of the database.</summary>
    private PropertyFigureRow()
    {
    }

    /// <inheritdoc cref="Figure.Property"/>
    public Property Property { get; private init; }

    /// <inheritdoc cref="Figure.Low"/>
    public decimal? Low { get; private init; }

    /// <inheritdoc cref="Figure.Typical"/>
    public decimal? Typical { get; private init; }

    /// <inheritdoc cref="Figure.High"/>
    public decimal? High { get; private init; }

    /// <inheritdoc cref="Figure.Unit"/>
    public string Unit { get; private init; } = "";

    /// <inheritdoc cref="Conditions.Temperature"/>
    public decimal? Temperature { get; private init; }

    /// <inheritdoc cref="Conditions.WaterTemperature"/>
    public decimal? WaterTemperature { get; private init; }

    /// <inheritdoc cref="Figure.Used"/>
    public bool Used { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public Figure ToRecord() => new()
    {
        Property = Property,
        Low = Low,
        Typical = Typical,
        High = High,
        Unit = Unit,
        At = Temperature is null && WaterTemperature is null
            ? null
            : new Conditions { Temperature = Temperature, WaterTemperature = WaterTemperature },
        Used = Used,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
