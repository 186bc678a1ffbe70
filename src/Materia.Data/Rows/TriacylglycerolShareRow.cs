using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>The share of one triacylglycerol in a profile of an ingredient.</summary>
internal sealed class TriacylglycerolShareRow : IngredientStatementRow
{
    public TriacylglycerolShareRow(RowPlace place, int profile, TriacylglycerolShare share)
        : base(place, share)
    {
        Profile = profile;
        Species = share.Species;
        Low = share.Low;
        Typical = share.Typical;
        High = share.High;
    }

    /// <summary>For the reader of the database.</summary>
    private TriacylglycerolShareRow()
    {
    }

    /// <summary>The ordinal of the profile.</summary>
    public int Profile { get; private init; }

    /// <inheritdoc cref="TriacylglycerolShare.Species"/>
    public string Species { get; private init; } = "";

    /// <inheritdoc cref="TriacylglycerolShare.Low"/>
    public decimal? Low { get; private init; }

    /// <inheritdoc cref="TriacylglycerolShare.Typical"/>
    public decimal? Typical { get; private init; }

    /// <inheritdoc cref="TriacylglycerolShare.High"/>
    public decimal? High { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public TriacylglycerolShare ToRecord() => new()
    {
        Species = Species,
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
