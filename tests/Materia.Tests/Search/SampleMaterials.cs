using Materia.Catalogue;
using static Materia.Tests.Search.SampleIngredient;

namespace Materia.Tests.Search;

/// <summary>Everything in the sample release that is neither a butter nor an oil.</summary>
internal static class SampleMaterials
{
    public static IReadOnlyList<Ingredient> All { get; } =
    [
        New("beeswax", IngredientKind.Wax, OriginKind.Animal, "Beeswax", "Cera Alba", Synonym("fr", "cire d'abeille"), Synonym("de", "Bienenwachs"))
            .Cas("8012-89-3").Ec("232-383-7").Does("emulsion-stabilising", "film-forming").Figure(Property.DropPoint, 61, 66),
        New("candelilla-wax", IngredientKind.Wax, OriginKind.Plant, "Candelilla wax", "Euphorbia Cerifera Cera", Synonym("fr", "cire de candelilla"))
            .Cas("8006-44-8").Ec("232-347-0").Does("film-forming").Figure(Property.DropPoint, 68.5m, 72.5m),
        New("cetyl-alcohol", IngredientKind.FattyAlcohol, OriginKind.Plant, "Cetyl alcohol", "Cetyl Alcohol",
                Name(NameKind.Chemical, "hexadecan-1-ol", "en"), Synonym("fr", "alcool cétylique"), Synonym("de", "Cetylalkohol"))
            .Cas("36653-82-4").Ec("253-149-0").Does("emulsion-stabilising", "opacifying").Figure(Property.MeltingPoint, null, null, 49.3m),
        New("cetearyl-alcohol", IngredientKind.FattyAlcohol, OriginKind.Plant, "Cetearyl alcohol", "Cetearyl Alcohol", Synonym("de", "Cetylstearylalkohol"))
            .Cas("67762-27-0").Does("emulsion-stabilising"),
        New("squalane", IngredientKind.Hydrocarbon, null, "Squalane", "Squalane").Cas("111-01-3").Does("skin-conditioning-emollient"),
        New("petrolatum", IngredientKind.Hydrocarbon, OriginKind.Mineral, "Petrolatum", "Petrolatum", Synonym("fr", "vaseline"), Synonym("de", "Vaseline"))
            .Cas("8009-03-8").Ec("232-373-2").Does("skin-conditioning-emollient"),
        New("isopropyl-myristate", IngredientKind.Ester, OriginKind.Synthetic, "Isopropyl myristate", "Isopropyl Myristate").Cas("110-27-0"),
        New("kaolin", IngredientKind.Clay, OriginKind.Mineral, "Kaolin", "Kaolin", Synonym("en", "white clay"), Synonym("fr", "argile blanche"),
                Name(NameKind.Pharmacopoeia, "Bolus alba", "la"), Name(NameKind.Code, "CI 77004"))
            .Cas("1332-58-7").Does("absorbent"),
        New("bentonite", IngredientKind.Clay, OriginKind.Mineral, "Bentonite", "Bentonite", Name(NameKind.Code, "E 558")).Cas("1302-78-9").Does("absorbent"),
        New("sea-salt", IngredientKind.Powder, OriginKind.Mineral, "Sea salt", "Maris Sal", Synonym("es", "sal marina")).Does("bulking"),
        New("corn-starch", IngredientKind.Starch, OriginKind.Plant, "Corn starch", "Zea Mays Starch", Synonym("de", "Maisstärke")).Does("absorbent", "bulking"),
    ];
}
