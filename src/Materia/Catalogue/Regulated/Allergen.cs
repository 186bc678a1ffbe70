namespace Materia.Catalogue.Regulated;

/// <summary>A fragrance allergen that a label must name above a threshold; the statement's source is the instrument, its locator the entry.</summary>
public sealed record Allergen : Statement
{
    /// <summary>The key, such as <c>linalool</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The name that the label prints.</summary>
    public required string DeclarationName { get; init; }

    /// <summary>The substances or materials whose shares are added.</summary>
    public required IReadOnlyList<RegulatedMember> Members { get; init; }

    /// <summary>True where the entry is a natural oil or extract as a whole.</summary>
    public bool NaturalExtract { get; init; }

    /// <summary>The share above which a product that stays on must name it [%].</summary>
    public required decimal LeaveOnThreshold { get; init; }

    /// <summary>The share above which a product that is washed off must name it [%].</summary>
    public required decimal RinseOffThreshold { get; init; }

    /// <summary>The last day on which a new product could be placed on the market without naming it; absent for those of the first list.</summary>
    public DateOnly? NewProductsUntil { get; init; }

    /// <summary>The last day on which products placed before may be made available; absent for those of the first list.</summary>
    public DateOnly? OldStockUntil { get; init; }
}
