namespace Materia.Catalogue.Regulated;

/// <summary>The products that a limit binds. Everything that is given must hold; a list holds when one of its values does.</summary>
public sealed record ProductScope
{
    /// <summary>Products that stay on, or are washed off; both where absent.</summary>
    public Exposure? Exposure { get; init; }

    /// <summary>Parts of the body; all where empty.</summary>
    public IReadOnlyList<BodySite> Sites { get; init; } = [];

    /// <summary>Keys of product types; all where empty.</summary>
    public IReadOnlyList<string> Uses { get; init; } = [];

    /// <summary>Keys of product types that are left out.</summary>
    public IReadOnlyList<string> ExceptUses { get; init; } = [];

    /// <summary>Categories of the fragrance standards; all where empty.</summary>
    public IReadOnlyList<string> IfraCategories { get; init; } = [];

    /// <summary>Whether a product of this type is bound.</summary>
    public bool Binds(ProductUse use) =>
        (Exposure is null || Exposure == use.Exposure)
        && (Sites.Count == 0 || Sites.Contains(use.Site))
        && (Uses.Count == 0 || Uses.Contains(use.Id, StringComparer.Ordinal))
        && !ExceptUses.Contains(use.Id, StringComparer.Ordinal)
        && (IfraCategories.Count == 0 || (use.IfraCategory is { } category && IfraCategories.Contains(category, StringComparer.Ordinal)));
}
