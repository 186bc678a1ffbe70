using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Allergens;

/// <summary>When the markets ask for an allergen on the label.</summary>
internal static class AllergenRules
{
    /// <summary>The first day on which a new product must name the allergen; <see langword="null"/> where the market does not ask for it.</summary>
    public static DateOnly? From(Allergen allergen, Authority law) => law switch
    {
        Authority.Us => null,
        Authority.Gb => allergen.NewProductsUntil is null ? DateOnly.MinValue : null,
        _ => allergen.NewProductsUntil?.AddDays(1) ?? DateOnly.MinValue,
    };

    /// <summary>The market's rule and its standing, in sentences.</summary>
    public static string Describe(Authority law, ProductUse? use) =>
        law switch
        {
            Authority.Us => "United States: no federal duty to name fragrance allergens is in force as far as the sources seen go; an act orders a list, which was not found published. The European thresholds stand for comparison.",
            Authority.Gb => "Great Britain: the first list counts; the additions of 2023 were not taken over according to the sources seen. Northern Ireland follows the European Union.",
            _ => "European Union: each entry counts for new products from its own day; products placed on the market before it may be made available until the entry's last day.",
        }
        + (use is null ? " The formula does not say what it is for: the stricter threshold, of products that stay on, was taken." : "");
}
