using Materia.Catalogue;
using static Materia.Tests.Search.SampleIngredient;

namespace Materia.Tests.Search;

/// <summary>Butters and oils of the sample release.</summary>
internal static class SampleFats
{
    private const string Emollient = "skin-conditioning-emollient";
    private const string HairConditioning = "hair-conditioning";

    public static IReadOnlyList<Ingredient> All { get; } = [.. Butters(), .. Oils()];

    private static IEnumerable<Ingredient> Butters() =>
    [
        New("shea-butter", IngredientKind.Butter, OriginKind.Plant, "Shea butter", "Butyrospermum Parkii Butter",
                Name(NameKind.Botanical, "Vitellaria paradoxa", "la"), Synonym("fr", "beurre de karité"), Synonym("fr", "karité"),
                Synonym("de", "Sheabutter"), Synonym("yo", "òrí"), Synonym("ak", "nkuto"), Synonym("ee", "yɔkumi"))
            .Does(Emollient, HairConditioning)
            .Figure(Property.MeltingRange, 32, 45).Figure(Property.IodineValue, 52, 66).Figure(Property.SaponificationValue, 170, 190)
            .Graded(0, 2).Acids(("16:0", 4), ("18:0", 43), ("18:1n-9", 44), ("18:1n-7", 1), ("18:2n-6", 6)),
        New("cocoa-butter", IngredientKind.Butter, OriginKind.Plant, "Cocoa butter", "Theobroma Cacao Seed Butter",
                Synonym("fr", "beurre de cacao"), Synonym("de", "Kakaobutter"), Name(NameKind.Pharmacopoeia, "Oleum cacao", "la"))
            .Cas("8002-31-1").Does(Emollient)
            .Figure(Property.MeltingRange, 31, 35).Figure(Property.SlipMeltingPoint, 30, 34).Figure(Property.IodineValue, 32, 42)
            .Graded(4, 4).Acids(("16:0", 26), ("18:0", 35), ("18:1", 34), ("18:2n-6", 3)),
        New("mango-butter", IngredientKind.Butter, OriginKind.Plant, "Mango butter", "Mangifera Indica Seed Butter", Synonym("fr", "beurre de mangue"))
            .Does(Emollient).Figure(Property.MeltingRange, 34, 38).Figure(Property.IodineValue, 40, 60)
            .Acids(("16:0", 7), ("18:0", 42), ("18:1n-9", 43), ("18:2n-6", 4)),
        New("sal-butter", IngredientKind.Butter, OriginKind.Plant, "Sal butter", "Shorea Robusta Seed Butter")
            .Does(Emollient).Figure(Property.MeltingRange, 36, null),
        New("cupuacu-butter", IngredientKind.Butter, OriginKind.Plant, "Cupuaçu butter", "Theobroma Grandiflorum Seed Butter")
            .Does(Emollient).Figure(Property.MeltingRange, null, 34),
        New("murumuru-butter", IngredientKind.Butter, OriginKind.Plant, "Murumuru butter", "Astrocaryum Murumuru Seed Butter").Does(Emollient),
    ];

    private static IEnumerable<Ingredient> Oils() =>
    [
        New("castor-oil", IngredientKind.Oil, OriginKind.Plant, "Castor oil", "Ricinus Communis Seed Oil",
                Synonym("fr", "huile de ricin"), Synonym("de", "Rizinusöl"), Name(NameKind.Pharmacopoeia, "Oleum ricini", "la"))
            .Cas("8001-79-4").Ec("232-293-8").Does(Emollient, "masking")
            .Figure(Property.Viscosity, 900, 1000, null, At(20)).Figure(Property.Viscosity, 220, 250, null, At(40))
            .Figure(Property.Density, 0.955m, 0.968m, null, At(20)).Figure(Property.RequiredHlb, 14, 14)
            .Acids(("18:1n-9-12OH", 88), ("18:1n-9", 4), ("18:2n-6", 5)),
        New("jojoba-oil", IngredientKind.Oil, OriginKind.Plant, "Jojoba oil", "Simmondsia Chinensis Seed Oil", Synonym("fr", "huile de jojoba"), Synonym("de", "Jojobaöl"))
            .Cas("61789-91-1").Does(Emollient).Figure(Property.Viscosity, 30, 40, null, At(40))
            .Figure(Property.RelativeDensity, 0.860m, 0.870m, null, new Conditions { Temperature = 20, WaterTemperature = 20 }),
        New("coconut-oil", IngredientKind.Oil, OriginKind.Plant, "Coconut oil", "Cocos Nucifera Oil", Synonym("fr", "huile de coco"), Synonym("de", "Kokosöl"))
            .Cas("8001-31-8").Does(Emollient, HairConditioning).Figure(Property.MeltingPoint, null, null, 24)
            .Figure(Property.MeltingRange, 60, 70, null, null).Figure(Property.MeltingRange, 23, 26, null, null, used: true)
            .Figure(Property.SaponificationValue, 248, 265).Graded(4, 4).Graded(1, 2)
            .Figure(Property.RelativeDensity, 0.908m, 0.921m, null, new Conditions { Temperature = 40 }),
        New("avocado-oil", IngredientKind.Oil, OriginKind.Plant, "Avocado oil", "Persea Gratissima Oil", Synonym("fr", "huile d'avocat"), Synonym("de", "Avocadoöl"))
            .Cas("8024-32-6").Does(Emollient).Figure(Property.IodineValue, 80, 95)
            .Profile(false, ("18:1n-9", null, 10m, null)).Profile(true, ("18:1n-9", 50m, 60m, 74m), ("18:1n-7", 3m, 4m, 6m)),
        New("sweet-almond-oil", IngredientKind.Oil, OriginKind.Plant, "Sweet almond oil", "Prunus Amygdalus Dulcis Oil",
                Synonym("en", "almond oil"), Synonym("fr", "huile d'amande douce"), Synonym("de", "Mandelöl"))
            .Cas("8007-69-0").Does(Emollient).Figure(Property.IodineValue, 95, 105),
        New("babassu-oil", IngredientKind.Oil, OriginKind.Plant, "Babassu oil", "Orbignya Oleifera Seed Oil", Synonym("pt", "óleo de babaçu")).Does(Emollient),
        New("olive-oil", IngredientKind.Oil, OriginKind.Plant, "Olive oil", "Olea Europaea Fruit Oil", Synonym("fr", "huile d'olive"), Synonym("de", "Olivenöl"))
            .Cas("8001-25-0").Does(Emollient),
        New("rosehip-seed-oil", IngredientKind.Oil, OriginKind.Plant, "Rosehip seed oil", "Rosa Canina Seed Oil", Synonym("de", "Hagebuttenkernöl")).Does(Emollient),
        New("lavender-oil", IngredientKind.EssentialOil, OriginKind.Plant, "Lavender oil", "Lavandula Angustifolia Oil",
                Synonym("fr", "huile essentielle de lavande"), Synonym("de", "Lavendelöl"))
            .Cas("8000-28-0").Does("masking", "tonic"),
    ];

    private static Conditions At(decimal temperature) => new() { Temperature = temperature };
}
