using Materia.Catalogue;

namespace Materia.Tests.Formulation;

/// <summary>A small catalogue whose fats are pure triglycerides, so that printed values hold for them.</summary>
internal static class TestCatalogue
{
    public static Release Release { get; } = new(7, DateTimeOffset.UnixEpoch, "test", Content());

    public static Ingredient Ingredient(string id, IngredientKind kind, string inci, string? acid = null, decimal? density = null) => new()
    {
        Id = id,
        FormerIds = id == "shea-butter" ? ["karite-butter"] : [],
        Kind = kind,
        Names =
        [
            new() { Text = id.Replace('-', ' '), Kind = NameKind.Common, Language = "en", Evidence = Evidence.Published, Source = "test" },
            new() { Text = inci, Kind = NameKind.Inci, Evidence = Evidence.Published, Source = "test" },
        ],
        FattyAcidProfiles = acid is null
            ? []
            :
            [
                new()
                {
                    Label = "pure",
                    Kind = ProfileKind.Sample,
                    Shares = [new() { Acid = acid, Typical = 100, Evidence = Evidence.Published, Source = "test", Locator = "pure" }],
                },
            ],
        Properties = density is null
            ? []
            : [new() { Property = Property.Density, Typical = density, Unit = Units.GramPerMillilitre, At = new() { Temperature = 20 }, Evidence = Evidence.Published, Source = "test", Locator = "1" }],
    };

    private static CatalogueContent Content() => new()
    {
        Ingredients =
        [
            Ingredient("babassu-oil", IngredientKind.Oil, "Orbignya Oleifera Seed Oil", "12:0"),
            Ingredient("beeswax", IngredientKind.Wax, "Cera Alba", density: 0.96m),
            Ingredient("cetyl-alcohol", IngredientKind.FattyAlcohol, "Cetyl Alcohol", density: 0.88m),
            Ingredient("cupuacu-butter", IngredientKind.Butter, "Theobroma Grandiflorum Seed Butter", "18:0"),
            Ingredient("kaolin", IngredientKind.Clay, "Kaolin", density: 2.6m),
            Ingredient("lavender-oil", IngredientKind.EssentialOil, "Lavandula Angustifolia Oil", density: 0.885m),
            Ingredient("linseed-oil", IngredientKind.Oil, "Linum Usitatissimum Seed Oil", "18:3n-3"),
            Ingredient("olive-oil", IngredientKind.Oil, "Olea Europaea Fruit Oil", "18:1n-9"),
            Ingredient("shea-butter", IngredientKind.Butter, "Butyrospermum Parkii Butter", "18:0"),
            Ingredient("silica", IngredientKind.Powder, "Silica", density: 2.2m),
            Ingredient("squalane", IngredientKind.Hydrocarbon, "Squalane", density: 0.81m),
            Ingredient("sunflower-oil", IngredientKind.Oil, "Helianthus Annuus Seed Oil", "18:2n-6"),
        ],
        Sources = [new() { Id = "test", Kind = SourceKind.Dataset, Title = "Pure substances" }],
        FattyAcids =
        [
            Acid("12:0", "lauric acid", 12, 0, 200.32m),
            Acid("18:0", "stearic acid", 18, 0, 284.48m),
            Acid("18:1n-9", "oleic acid", 18, 1, 282.46m),
            Acid("18:2n-6", "linoleic acid", 18, 2, 280.45m),
            Acid("16:0-ol", "cetyl alcohol", 16, 0, 242.45m) with { Alcohol = true },
            Acid("18:3n-3", "alpha-linolenic acid", 18, 3, 278.43m),
        ],
        Uses =
        [
            Use("hair-mask-rinse-off", Exposure.RinseOff, BodySite.Hair),
            Use("body-butter-leave-on", Exposure.LeaveOn, BodySite.Body),
        ],
    };

    private static FattyAcid Acid(string symbol, string name, int carbons, int doubleBonds, decimal molarMass) => new()
    {
        Symbol = symbol,
        Name = name,
        Carbons = carbons,
        DoubleBonds = doubleBonds,
        MolarMass = molarMass,
        Evidence = Evidence.Published,
        Source = "test",
        Locator = symbol,
    };

    private static ProductUse Use(string id, Exposure exposure, BodySite site) => new()
    {
        Id = id,
        Name = id,
        Exposure = exposure,
        Site = site,
        Description = id,
        Evidence = Evidence.CommonPractice,
        Source = "test",
    };
}
