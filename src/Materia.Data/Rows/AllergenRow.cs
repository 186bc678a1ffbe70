using Materia.Catalogue.Regulated;

namespace Materia.Data.Rows;

/// <summary>A fragrance allergen; its members are rows of their own.</summary>
internal sealed class AllergenRow : StatementRow
{
    public AllergenRow(int release, int ordinal, Allergen allergen)
        : base(release, ordinal, allergen)
    {
        Id = allergen.Id;
        DeclarationName = allergen.DeclarationName;
        NaturalExtract = allergen.NaturalExtract;
        LeaveOnThreshold = allergen.LeaveOnThreshold;
        RinseOffThreshold = allergen.RinseOffThreshold;
        NewProductsUntil = allergen.NewProductsUntil;
        OldStockUntil = allergen.OldStockUntil;
    }

    /// <summary>For the reader of the database.</summary>
    private AllergenRow()
    {
    }

    /// <inheritdoc cref="Allergen.Id"/>
    public string Id { get; private init; } = "";

    /// <inheritdoc cref="Allergen.DeclarationName"/>
    public string DeclarationName { get; private init; } = "";

    /// <inheritdoc cref="Allergen.NaturalExtract"/>
    public bool NaturalExtract { get; private init; }

    /// <inheritdoc cref="Allergen.LeaveOnThreshold"/>
    public decimal LeaveOnThreshold { get; private init; }

    /// <inheritdoc cref="Allergen.RinseOffThreshold"/>
    public decimal RinseOffThreshold { get; private init; }

    /// <inheritdoc cref="Allergen.NewProductsUntil"/>
    public DateOnly? NewProductsUntil { get; private init; }

    /// <inheritdoc cref="Allergen.OldStockUntil"/>
    public DateOnly? OldStockUntil { get; private init; }

    /// <summary>The catalogue's record of this row and its members.</summary>
    public Allergen ToRecord(IReadOnlyList<RegulatedMember> members) => new()
    {
        Id = Id,
        DeclarationName = DeclarationName,
        Members = members,
        NaturalExtract = NaturalExtract,
        LeaveOnThreshold = LeaveOnThreshold,
        RinseOffThreshold = RinseOffThreshold,
        NewProductsUntil = NewProductsUntil,
        OldStockUntil = OldStockUntil,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
