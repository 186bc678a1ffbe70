using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A constituent of an ingredient.</summary>
internal sealed class ConstituentRow : IngredientStatementRow
{
    public ConstituentRow(RowPlace place, Constituent constituent)
        : base(place, constituent)
    {
        Substance = constituent.Substance;
        Cas = constituent.Cas;
        Low = constituent.Low;
        Typical = constituent.Typical;
        High = constituent.High;
        Used = constituent.Used;
    }

    /// <summary>For the reader of the database.</summary>
    private ConstituentRow()
    {
    }

    /// <inheritdoc cref="Constituent.Substance"/>
    public string Substance { get; private init; } = "";

    /// <inheritdoc cref="Constituent.Cas"/>
    public string? Cas { get; private init; }

    /// <inheritdoc cref="Constituent.Low"/>
    public decimal? Low { get; private init; }

    /// <inheritdoc cref="Constituent.Typical"/>
    public decimal? Typical { get; private init; }

    /// <inheritdoc cref="Constituent.High"/>
    public decimal? High { get; private init; }

    /// <inheritdoc cref="Constituent.Used"/>
    public bool Used { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public Constituent ToRecord() => new()
    {
        Substance = Substance,
        Cas = Cas,
        Low = Low,
        Typical = Typical,
        High = High,
        Used = Used,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
