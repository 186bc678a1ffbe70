using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A part of a mixture.</summary>
internal sealed class CompositePartRow : IngredientStatementRow
{
    public CompositePartRow(RowPlace place, CompositePart part)
        : base(place, part)
    {
        InciName = part.InciName;
        PartIngredient = part.Ingredient;
        Cas = part.Cas;
        Low = part.Low;
        Typical = part.Typical;
        High = part.High;
    }

    /// <summary>For the reader of the database.</summary>
    private CompositePartRow()
    {
    }

    /// <inheritdoc cref="CompositePart.InciName"/>
    public string InciName { get; private init; } = "";

    /// <inheritdoc cref="CompositePart.Ingredient"/>
    public string? PartIngredient { get; private init; }

    /// <inheritdoc cref="CompositePart.Cas"/>
    public string? Cas { get; private init; }

    /// <inheritdoc cref="CompositePart.Low"/>
    public decimal? Low { get; private init; }

    /// <inheritdoc cref="CompositePart.Typical"/>
    public decimal? Typical { get; private init; }

    /// <inheritdoc cref="CompositePart.High"/>
    public decimal? High { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public CompositePart ToRecord() => new()
    {
        InciName = InciName,
        Ingredient = PartIngredient,
        Cas = Cas,
        Low = Low,
        Typical = Typical,
        High = High,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
