using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>The usual share of an ingredient in a type of product.</summary>
internal sealed class UsageLevelRow : IngredientStatementRow
{
    public UsageLevelRow(RowPlace place, UsageLevel level)
        : base(place, level)
    {
        ProductUse = level.Use;
        Low = level.Low;
        Typical = level.Typical;
        High = level.High;
    }

    /// <summary>For the reader of the database.</summary>
    private UsageLevelRow()
    {
    }

    /// <inheritdoc cref="UsageLevel.Use"/>
    public string ProductUse { get; private init; } = "";

    /// <inheritdoc cref="UsageLevel.Low"/>
    public decimal? Low { get; private init; }

    /// <inheritdoc cref="UsageLevel.Typical"/>
    public decimal? Typical { get; private init; }

    /// <inheritdoc cref="UsageLevel.High"/>
    public decimal? High { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public UsageLevel ToRecord() => new()
    {
        Use = ProductUse,
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
