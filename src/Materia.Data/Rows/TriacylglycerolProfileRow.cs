using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A composition of an ingredient by triacylglycerol; its shares are <see cref="TriacylglycerolShareRow"/>.</summary>
internal sealed class TriacylglycerolProfileRow : ContentRow, IIngredientPart
{
    public TriacylglycerolProfileRow(RowPlace place, TriacylglycerolProfile profile)
        : base(place.Release, place.Ordinal)
    {
        Ingredient = place.Ingredient;
        Label = profile.Label;
        Used = profile.Used;
    }

    /// <summary>For the reader of the database.</summary>
    private TriacylglycerolProfileRow()
    {
    }

    /// <inheritdoc/>
    public string Ingredient { get; private init; } = "";

    /// <inheritdoc cref="TriacylglycerolProfile.Label"/>
    public string Label { get; private init; } = "";

    /// <inheritdoc cref="TriacylglycerolProfile.Used"/>
    public bool Used { get; private init; }

    /// <summary>The catalogue's record of this row and its shares.</summary>
    public TriacylglycerolProfile ToRecord(IReadOnlyList<TriacylglycerolShare> shares) => new()
    {
        Label = Label,
        Used = Used,
        Shares = shares,
    };
}
