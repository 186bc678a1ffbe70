using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry;

/// <summary>Materials of products with water; their figures are the test's own.</summary>
internal static class ProductMaterials
{
    public static readonly Release Release = new(1, DateTimeOffset.UnixEpoch, "", new CatalogueContent
    {
        Ingredients =
        [
            Of("water", IngredientKind.Solvent, "Aqua", (Property.NaturalOriginIndex, 1)),
            Of("rose-water", IngredientKind.Hydrosol, "Rosa Damascena Flower Water", (Property.WaterContent, 99)),
            Of("honey", IngredientKind.Humectant, "Honey", (Property.WaterContent, 17)),
            Of("glycerin", IngredientKind.Humectant, "Glycerin"),
            Of("alcohol", IngredientKind.Solvent, "Alcohol"),
            Of("clay", IngredientKind.Clay, "Kaolin"),
            Of("green-tea-extract", IngredientKind.Extract, "Camellia Sinensis Leaf Extract"),
            Of("sodium-benzoate", IngredientKind.Preservative, "Sodium Benzoate", (Property.DissociationConstant, 4.2m)) with
            {
                Properties = [Figure(Property.DissociationConstant, 4.2m), new() { Property = Property.EffectivePh, Low = 2, High = 5, Unit = Units.PhScale, Evidence = Evidence.Memory, Source = "recalled" }],
            },
            Of("methylparaben", IngredientKind.Preservative, "Methylparaben", (Property.DissociationConstant, 8.2m), (Property.WaterSolubility, 2.4m)),
            Of("benzoate-solution", IngredientKind.Preservative, null) with
            {
                Parts = [Part("Aqua", 70, "water"), Part("Sodium Benzoate", 30, "sodium-benzoate")],
            },
            Of("soya-oil", IngredientKind.Oil, "Glycine Soja Oil", (Property.RequiredHlb, 7), (Property.NaturalOriginIndex, 1)),
            Of("mineral-oil", IngredientKind.Hydrocarbon, "Paraffinum Liquidum", (Property.RequiredHlb, 12), (Property.RequiredHlbWaterInOil, 5), (Property.NaturalOriginIndex, 0)),
            Of("bare-oil", IngredientKind.Oil, "Oleum Ignotum"),
            Of("polysorbate-80", IngredientKind.Emulsifier, "Polysorbate 80", (Property.Hlb, 15), (Property.NaturalOriginIndex, 0.8m)) with { Charge = Charge(IonicCharge.Nonionic) },
            Of("sorbitan-oleate", IngredientKind.Emulsifier, "Sorbitan Oleate", (Property.Hlb, 4.3m)) with { Charge = Charge(IonicCharge.Nonionic) },
            Of("lecithin", IngredientKind.Emulsifier, "Lecithin", (Property.Hlb, 5)) with { Charge = Charge(IonicCharge.Amphoteric) },
            Of("wax-mixture", IngredientKind.Emulsifier, null) with { Parts = [Unrecorded("Cetearyl Alcohol", 80), Unrecorded("Cetearyl Sulfate", 20)] },
            Of("new-preservative", IngredientKind.Preservative, null) with { Parts = [Part("Aqua", 90, "water"), Unrecorded("Novum", 10)] },
            Of("dissolved-anionic", IngredientKind.Surfactant, null) with { Parts = [Part("Aqua", 70, "water"), Unrecorded("Sodium Laureth Sulfate", 30)], Charge = Charge(IonicCharge.Anionic) },
            Of("cationic", IngredientKind.Conditioner, "Behentrimonium Chloride") with { Charge = Charge(IonicCharge.Cationic) },
            Of("anionic", IngredientKind.Surfactant, "Sodium Coco-Sulfate", (Property.WaterContent, 5)) with { Charge = Charge(IonicCharge.Anionic) },
            Of("tocopherol", IngredientKind.Antioxidant, "Tocopherol"),
            Of("three-quarters", IngredientKind.Ester, "Ester", (Property.NaturalOriginIndex, 0.75m)),
        ],
        Sources = [],
        FattyAcids = [],
        Uses = [],
    });

    public static readonly Limit BenzoicAcid = new()
    {
        Id = "benzoic",
        Substance = "Benzoic acid",
        Authority = Authority.Eu,
        Kind = LimitKind.Preservative,
        Members = [new RegulatedMember { Name = "sodium benzoate", InciName = "Sodium Benzoate", Factor = 0.8474m }],
        Scope = new ProductScope(),
        ScopeText = "all",
        MaxPercent = 0.5m,
        Evidence = Evidence.Memory,
        Source = "recalled",
    };

    public static Blend Blend(params (string Id, double Percent)[] shares) =>
        new([.. shares.Select(s => new BlendComponent(s.Id, s.Percent / 100, Release.FindIngredient(s.Id)!))], Release, explain: true);

    public static Ingredient Of(string id, IngredientKind kind, string? inci, params (Property Property, decimal Value)[] figures) => new()
    {
        Id = id,
        Kind = kind,
        Names = inci is null ? [Name(id, NameKind.Common)] : [Name(id, NameKind.Common), Name(inci, NameKind.Inci)],
        Properties = [.. figures.Select(f => Figure(f.Property, f.Value))],
    };

    private static Figure Figure(Property property, decimal value) =>
        new() { Property = property, Typical = value, Unit = PropertyDefinition.All[property].Unit, Evidence = Evidence.Memory, Source = "recalled" };

    private static ChargeStatement Charge(IonicCharge charge) => new() { Charge = charge, Evidence = Evidence.Memory, Source = "recalled" };

    private static IngredientName Name(string text, NameKind kind) => new() { Text = text, Kind = kind, Evidence = Evidence.Memory, Source = "recalled" };

    private static CompositePart Unrecorded(string inci, decimal typical) => Part(inci, typical, null);

    private static CompositePart Part(string inci, decimal typical, string? ingredient) =>
        new() { InciName = inci, Ingredient = ingredient, Typical = typical, Evidence = Evidence.Memory, Source = "recalled" };
}
