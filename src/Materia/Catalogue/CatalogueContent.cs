using Materia.Catalogue.Needs;
using Materia.Catalogue.Regulated;

namespace Materia.Catalogue;

/// <summary>Everything that a release holds, each list in the order of its key (ordinal).</summary>
public sealed record CatalogueContent
{
    /// <summary>The ingredients, by id.</summary>
    public required IReadOnlyList<Ingredient> Ingredients { get; init; }

    /// <summary>The sources, by id.</summary>
    public required IReadOnlyList<Source> Sources { get; init; }

    /// <summary>The fatty acids and alcohols, in the order of the table.</summary>
    public required IReadOnlyList<FattyAcid> FattyAcids { get; init; }

    /// <summary>The product types, in the order of the table.</summary>
    public required IReadOnlyList<ProductUse> Uses { get; init; }

    /// <summary>The substitution groups, in the order of the table.</summary>
    public IReadOnlyList<SubstitutionGroup> SubstitutionGroups { get; init; } = [];

    /// <summary>The limits, in the order of the table.</summary>
    public IReadOnlyList<Limit> Limits { get; init; } = [];

    /// <summary>The fragrance allergens, in the order of the table.</summary>
    public IReadOnlyList<Allergen> Allergens { get; init; } = [];

    /// <summary>What people say of hair, skin and choices, in the order of the table.</summary>
    public IReadOnlyList<Need> Needs { get; init; } = [];
}
