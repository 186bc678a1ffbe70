using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>The share of one fatty acid in a profile of an ingredient.</summary>
internal sealed class FattyAcidShareRow : IngredientStatementRow
{
    public FattyAcidShareRow(RowPlace place, int profile, FattyAcidShare share)
        : base(place, share)
    {
        Profile = profile;
        Acid = share.Acid;
        Low = share.Low;
        Typical = share.Typical;
        High = share.High;
    }

    /// <summary>For the reader of the database.</summary>
    private FattyAcidShareRow()
    {
    }

    /// <summary>The ordinal of the profile.</summary>
    public int Profile { get; private init; }

    /// <inheritdoc cref="FattyAcidShare.Acid"/>
    public string Acid { get; private init; } = "";

    /// <inheritdoc cref="FattyAcidShare.Low"/>
    public decimal? Low { get; private init; }

    /// <inheritdoc cref="FattyAcidShare.Typical"/>
    public decimal? Typical { get; private init; }

    /// <inheritdoc cref="FattyAcidShare.High"/>
    public decimal? High { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public FattyAcidShare ToRecord() => new()
    {
        Acid = Acid,
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
