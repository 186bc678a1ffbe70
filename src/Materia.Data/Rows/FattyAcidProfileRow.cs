using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A fatty-acid profile of an ingredient; its shares are <see cref="FattyAcidShareRow"/>.</summary>
internal sealed class FattyAcidProfileRow : ContentRow, IIngredientPart
{
    public FattyAcidProfileRow(RowPlace place, FattyAcidProfile profile)
        : base(place.Release, place.Ordinal)
    {
        Ingredient = place.Ingredient;
        Label = profile.Label;
        Kind = profile.Kind;
        Part = profile.Of;
        Used = profile.Used;
    }

    /// <summary>For the reader of the database.</summary>
    private FattyAcidProfileRow()
    {
    }

    /// <inheritdoc/>
    public string Ingredient { get; private init; } = "";

    /// <inheritdoc cref="FattyAcidProfile.Label"/>
    public string Label { get; private init; } = "";

    /// <inheritdoc cref="FattyAcidProfile.Kind"/>
    public ProfileKind Kind { get; private init; }

    /// <inheritdoc cref="FattyAcidProfile.Of"/>
    public ProfilePart Part { get; private init; }

    /// <inheritdoc cref="FattyAcidProfile.Used"/>
    public bool Used { get; private init; }

    /// <summary>The catalogue's record of this row and its shares.</summary>
    public FattyAcidProfile ToRecord(IReadOnlyList<FattyAcidShare> shares) => new()
    {
        Label = Label,
        Kind = Kind,
        Of = Part,
        Used = Used,
        Shares = shares,
    };
}
