using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation;
using Materia.Regulation.Allergens;
using Materia.Regulation.Declaring;
using Materia.Regulation.Limits;

namespace Materia.Tests.Regulation;

/// <summary>Materials with names for labels, and drafts of them.</summary>
internal static class Labels
{
    public static readonly ProductUse Cream = Rules.Lotion with { Id = "face-cream", Site = BodySite.Face };
    public static readonly ProductUse LipBalm = Rules.Lotion with { Id = "lip-balm", Site = BodySite.Lips };

    /// <summary>The materials of worked-examples.md, 8.</summary>
    public static readonly Ingredient[] Shelf =
    [
        Named("water", IngredientKind.Solvent, "Aqua") with
        {
            Names = [Name("Water", NameKind.Common), Name("Aqua", NameKind.Inci), Name("Water", NameKind.Inci) with { Note = "the name on labels in the United States" }],
        },
        Named("shea-butter", IngredientKind.Butter, "Butyrospermum Parkii Butter", "Shea butter"),
        Named("glycerin", IngredientKind.Humectant, "Glycerin"),
        Named("cetyl-alcohol", IngredientKind.FattyAlcohol, "Cetyl Alcohol"),
        Named("phenoxyethanol", IngredientKind.Preservative, "Phenoxyethanol"),
        Named("perfume", IngredientKind.Active, "Parfum"),
        Named("xanthan-gum", IngredientKind.Thickener, "Xanthan Gum"),
        Named("tocopherol", IngredientKind.Antioxidant, "Tocopherol"),
        Named("iron-oxide-red", IngredientKind.Powder, "CI 77491", "Red iron oxide"),
        Named("lavender-oil", IngredientKind.EssentialOil, "Lavandula Angustifolia Oil", "Lavender oil"),
        Named("rose-oil", IngredientKind.EssentialOil, "Rosa Damascena Flower Oil", "Rose oil"),
        Named("benzyl-alcohol", IngredientKind.Preservative, "Benzyl Alcohol"),
        Named("zinc-oxide-nano", IngredientKind.Powder, "Zinc Oxide (nano)", "Zinc oxide, nano grade"),
        Named("nameless", IngredientKind.Extract, null, "Grandmother's extract"),
        Named("emulsifying-wax", IngredientKind.Emulsifier, null, "Emulsifying wax") with
        {
            Parts =
            [
                Part("Cetearyl Alcohol", 75, 80, 85), Part("Cetyl Alcohol", 0, 0, 0, "cetyl-alcohol"), Part("Ceteareth-20", 15, 20, 25),
            ],
        },
        Named("preserved-water", IngredientKind.Preservative, null, "Preservative in water") with
        {
            Parts = [Part("Aqua", 60, 60, 60, "water"), Part("Phenoxyethanol", 40, 40, 40, "phenoxyethanol")],
        },
    ];

    public static Ingredient Named(string id, IngredientKind kind, string? inci, string? common = null) => Rules.Material(id, kind) with
    {
        Names = inci is null ? [Name(common ?? id, NameKind.Common)] : [Name(common ?? inci, NameKind.Common), Name(inci, NameKind.Inci)],
    };

    public static IngredientName Name(string text, NameKind kind) => new() { Text = text, Kind = kind, Evidence = Evidence.Memory, Source = "recalled" };

    public static CompositePart Part(string inci, decimal? low, decimal? typical, decimal? high, string? ingredient = null) =>
        new() { InciName = inci, Ingredient = ingredient, Low = low, Typical = typical, High = high, Evidence = Evidence.Memory, Source = "recalled" };

    public static Release Release(params Ingredient[] more) => Rules.Release([.. Shelf.Where(s => more.All(m => m.Id != s.Id)), .. more]);

    public static Declaration Draft(Authority law, ProductUse? use, params (string Id, decimal Percent)[] lines) => Draft(Release(), law, use, lines);

    public static Declaration Draft(Release release, Authority law, ProductUse? use, params (string Id, decimal Percent)[] lines)
    {
        var formula = Formula(release, law, use, lines);
        return DeclarationDraft.Of(formula, LimitFindings.Of(formula), AllergenFindings.Of(formula), explain: true);
    }

    public static RegulatedFormula Formula(Release release, Authority law, ProductUse? use, params (string Id, decimal Percent)[] lines) => new(
        [.. lines.Select(l => new RegulatedLine(l.Id, l.Percent, release.FindIngredient(l.Id)!))], release, use, [law], new DateOnly(2026, 11, 25));
}
