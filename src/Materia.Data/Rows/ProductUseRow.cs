using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A type of product.</summary>
internal sealed class ProductUseRow : StatementRow
{
    public ProductUseRow(int release, int ordinal, ProductUse use)
        : base(release, ordinal, use)
    {
        Id = use.Id;
        Name = use.Name;
        Exposure = use.Exposure;
        Site = use.Site;
        IfraCategory = use.IfraCategory;
        Caution = use.Caution;
        Description = use.Description;
    }

    /// <summary>For the reader of the database.</summary>
    private ProductUseRow()
    {
    }

    /// <inheritdoc cref="ProductUse.Id"/>
    public string Id { get; private init; } = "";

    /// <inheritdoc cref="ProductUse.Name"/>
    public string Name { get; private init; } = "";

    /// <inheritdoc cref="ProductUse.Exposure"/>
    public Exposure Exposure { get; private init; }

    /// <inheritdoc cref="ProductUse.Site"/>
    public BodySite Site { get; private init; }

    /// <inheritdoc cref="ProductUse.IfraCategory"/>
    public string? IfraCategory { get; private init; }

    /// <inheritdoc cref="ProductUse.Caution"/>
    public string? Caution { get; private init; }

    /// <inheritdoc cref="ProductUse.Description"/>
    public string Description { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public ProductUse ToRecord() => new()
    {
        Id = Id,
        Name = Name,
        Exposure = Exposure,
        Site = Site,
        IfraCategory = IfraCategory,
        Caution = Caution,
        Description = Description,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
