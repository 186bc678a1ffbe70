using Materia.Catalogue;
using static Materia.Api.Tests.Data.SampleContent;

namespace Materia.Api.Tests.Data;

/// <summary>The two ingredients of <see cref="SampleContent"/>: one that says everything (with <see cref="SampleWorking"/>), one that says little.</summary>
internal static class SampleIngredients
{
    public static Ingredient Wax() => new()
    {
        Id = "a-wax-out-of-order",
        Kind = IngredientKind.Wax,
        Names = [new IngredientName { Text = "A wax", Kind = NameKind.Common, Evidence = Evidence.Memory, Source = Recalled }],
        SubstitutionGroups =
        [
            new SubstitutionMembership { Group = SampleWorking.GroupId, SwapRatio = 1.50m, Text = "It sets harder.", Evidence = Evidence.Memory, Source = Recalled },
        ],
    };

    public static Ingredient Butter() => new()
    {
        Id = "sample-butter",
        FormerIds = ["z-butter", "old-butter"],
        Kind = IngredientKind.Butter,
        Origin = new Origin
        {
            From = OriginKind.Plant,
            Species = "Exemplum fictum",
            Part = "seed",
            Extraction = "pressing",
            AllergenFamilies = [AllergenFamily.Wool, AllergenFamily.Bee],
            Evidence = Evidence.Published,
            Source = Table,
            Locator = "p. 1",
        },
        Names =
        [
            new IngredientName { Text = "Sample butter", Kind = NameKind.Common, Language = "en", Evidence = Evidence.CommonPractice, Source = Table },
            new IngredientName { Text = "Beurre d'échantillon", Kind = NameKind.Synonym, Language = "fr", Evidence = Evidence.Memory, Source = Recalled, CheckIn = Table },
            new IngredientName { Text = "EXEMPLUM BUTTER", Kind = NameKind.Inci, Evidence = Evidence.Published, Source = Table, Locator = "entry 7" },
        ],
        Numbers =
        [
            new RegistryNumber { Registry = Registry.Cas, Number = "61789-91-1", Evidence = Evidence.Memory, Source = Recalled },
            new RegistryNumber { Registry = Registry.Ec, Number = "232-293-8", Evidence = Evidence.Memory, Source = Recalled },
        ],
        Functions = [new FunctionStatement { Function = "skin-conditioning-emollient", Evidence = Evidence.Published, Source = Table, Locator = "p. 2" }],
        Properties =
        [
            new Figure
            {
                Property = Property.Density,
                Low = 0.910m,
                Typical = 0.9150m,
                High = 0.92m,
                Unit = Units.GramPerMillilitre,
                At = new Conditions { Temperature = 20.0m, WaterTemperature = 4m },
                Used = true,
                Evidence = Evidence.Published,
                Source = Table,
                Locator = "table 2",
                Note = "One sample.",
            },
            new Figure { Property = Property.MeltingRange, Low = -5m, High = 100m, Unit = Units.Celsius, Evidence = Evidence.Memory, Source = Recalled },
            new Figure { Property = Property.FreeFattyAcids, Typical = 0m, Unit = Units.Percent, Evidence = Evidence.Secondary, Source = Table },
        ],
        FattyAcidProfiles = [AcidRanges(), AcidSample(), AlcoholSample()],
        TriacylglycerolProfiles = [FatRanges(), FatSample()],
        Constituents =
        [
            new Constituent { Substance = "linalool", Cas = "78-70-6", Low = 9m, Typical = 10.0m, High = 100m, Used = true, Evidence = Evidence.Memory, Source = Recalled },
            new Constituent { Substance = "esters", Evidence = Evidence.Memory, Source = Recalled },
        ],
        Comedogenic = [new ComedogenicNote { Low = 0, High = 2, Irritancy = 1, Tested = "the sample", Evidence = Evidence.Published, Source = Table, Locator = "table 3" }],
        Cautions = [new Caution { Text = "Made up: do not use.", Evidence = Evidence.CommonPractice, Source = Recalled }],
    };

    private static FattyAcidProfile AcidRanges() => new()
    {
        Label = "a made-up standard",
        Kind = ProfileKind.Range,
        Shares = [new FattyAcidShare { Acid = "18:1n-9", Low = 9.0m, High = 80.00m, Evidence = Evidence.Published, Source = Table, Locator = "table 4" }],
    };

    private static FattyAcidProfile AcidSample() => new()
    {
        Label = "a made-up sample",
        Kind = ProfileKind.Sample,
        Used = true,
        Shares = [new FattyAcidShare { Acid = "18:1n-9", Typical = 100.0m, Evidence = Evidence.Memory, Source = Recalled }],
    };

    private static TriacylglycerolProfile FatRanges() => new()
    {
        Label = "made-up samples",
        Shares =
        [
            new TriacylglycerolShare { Species = "SOS", Low = 9.0m, High = 80.00m, Evidence = Evidence.Published, Source = Table, Locator = "table 5" },
            new TriacylglycerolShare { Species = "SLO+OOO", High = 5m, Evidence = Evidence.Memory, Source = Recalled, CheckIn = Table, Note = "Printed as one." },
        ],
    };

    private static TriacylglycerolProfile FatSample() => new()
    {
        Label = "a made-up sample",
        Used = true,
        Shares = [new TriacylglycerolShare { Species = "LaMP", Typical = 99.0m, Evidence = Evidence.Secondary, Source = Table }],
    };

    private static FattyAcidProfile AlcoholSample() => new()
    {
        Label = "its alcohols",
        Kind = ProfileKind.Sample,
        Of = ProfilePart.Alcohols,
        Used = true,
        Shares = [new FattyAcidShare { Acid = "16:0-ol", Typical = 99.5m, Evidence = Evidence.Memory, Source = Recalled }],
    };
}
