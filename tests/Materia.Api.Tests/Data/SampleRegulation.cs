using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Api.Tests.Data;

/// <summary>Limits and allergens of the sample catalogue: made up, with something in every column. Only the CAS numbers are real.</summary>
internal static class SampleRegulation
{
    public static IReadOnlyList<Limit> Limits() =>
    [
        new Limit
        {
            Id = "z-limit",
            Substance = "Sample acid",
            Authority = Authority.Eu,
            Kind = LimitKind.Preservative,
            Members =
            [
                new RegulatedMember { Name = "sample acid", Cas = "65-85-0", InciName = "Sample Acid" },
                new RegulatedMember { Name = "sodium sample", Cas = "532-32-1", Factor = 0.8470m },
                new RegulatedMember { Name = "the wax", Ingredient = "a-wax-out-of-order" },
            ],
            ExceptIngredients = ["sample-butter"],
            Scope = new ProductScope
            {
                Exposure = Exposure.LeaveOn,
                Sites = [BodySite.Lips, BodySite.Hair],
                Uses = ["sample-balm"],
                ExceptUses = ["sample-mask"],
                IfraCategories = ["7B", "1"],
            },
            ScopeText = "Products that stay",
            MaxPercent = 0.50m,
            Below = true,
            ExpressedAs = "acid",
            RatioGroup = "sample-group",
            Conditions = "Not for children.",
            Warning = "Contains sample acid",
            WarningAbove = 0.10m,
            From = new DateOnly(2025, 11, 1),
            OldStockUntil = new DateOnly(2027, 4, 30),
            Evidence = Evidence.Published,
            Source = SampleContent.Table,
            Locator = "entry 1",
        },
        new Limit
        {
            Id = "a-limit",
            Substance = "Other acid",
            Authority = Authority.Opinion,
            Kind = LimitKind.RawMaterial,
            Members = [new RegulatedMember { Name = "other acid", InciName = "Other Acid" }],
            Scope = new ProductScope(),
            ScopeText = "The raw material",
            Evidence = Evidence.Memory,
            Source = SampleContent.Recalled,
        },
    ];

    public static IReadOnlyList<Allergen> Allergens() =>
    [
        new Allergen
        {
            Id = "z-allergen",
            DeclarationName = "Sample Oil/Extract",
            Members = [new RegulatedMember { Name = "sample oil", InciName = "Sample Oil", Ingredient = "sample-butter" }],
            NaturalExtract = true,
            LeaveOnThreshold = 0.0010m,
            RinseOffThreshold = 0.01m,
            NewProductsUntil = new DateOnly(2026, 7, 31),
            OldStockUntil = new DateOnly(2028, 7, 31),
            Evidence = Evidence.Published,
            Source = SampleContent.Table,
            Locator = "entry 2",
        },
        new Allergen
        {
            Id = "a-allergen",
            DeclarationName = "Linalool",
            Members = [new RegulatedMember { Name = "linalool", Cas = "78-70-6" }],
            LeaveOnThreshold = 0.001m,
            RinseOffThreshold = 0.01m,
            Evidence = Evidence.Secondary,
            Source = SampleContent.Table,
        },
    ];
}
