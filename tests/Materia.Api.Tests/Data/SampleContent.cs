using Materia.Catalogue;

namespace Materia.Api.Tests.Data;

/// <summary>
/// A small made-up catalogue with every kind of statement in it. The materials and figures are invented for these tests and say
/// nothing about the world; only the CAS and EC numbers are real, because their check digits are checked.
/// </summary>
internal static class SampleContent
{
    public const string Table = "sample-table";

    public const string Recalled = "recalled";

    public static CatalogueContent Create() => new()
    {
        Ingredients = [SampleWorking.Add(SampleIngredients.Butter()), SampleIngredients.Wax()],
        Sources =
        [
            new Source { Id = Recalled, Kind = SourceKind.Recollection, Title = "Recalled, not looked up" },
            new Source
            {
                Id = Table,
                Kind = SourceKind.Dataset,
                Authors = "Sample, A.; Sample, B.",
                Title = "Tables “for” tests: é, 油, ' and \"",
                Year = 2020,
                Locator = "Vol. 1",
                Licence = "CC0-1.0",
                Note = "Made up.",
            },
        ],
        FattyAcids =
        [
            // Not in the order of the symbols: the table's own order has to come back.
            new FattyAcid
            {
                Symbol = "18:1n-9",
                Name = "oleic acid",
                SystematicName = "(9Z)-octadec-9-enoic acid",
                Cas = "112-80-1",
                Carbons = 18,
                DoubleBonds = 1,
                MolarMass = 282.50m,
                MeltingPoint = 13m,
                Evidence = Evidence.Memory,
                Source = Recalled,
                CheckIn = Table,
            },
            new FattyAcid
            {
                Symbol = "16:0-ol",
                Name = "cetyl alcohol",
                Carbons = 16,
                DoubleBonds = 0,
                Hydroxyls = 1,
                Alcohol = true,
                MolarMass = 242.4m,
                Evidence = Evidence.Secondary,
                Source = Table,
                Note = "A note.",
            },
        ],
        Uses =
        [
            new ProductUse
            {
                Id = "sample-mask",
                Name = "Sample mask",
                Exposure = Exposure.RinseOff,
                Site = BodySite.Hair,
                Description = "Is put on and washed off.",
                Evidence = Evidence.CommonPractice,
                Source = Recalled,
            },
            new ProductUse
            {
                Id = "sample-balm",
                Name = "Sample balm",
                Exposure = Exposure.LeaveOn,
                Site = BodySite.Lips,
                IfraCategory = "1",
                Caution = "Part of it is swallowed.",
                Description = "Is put on and stays.",
                Evidence = Evidence.CommonPractice,
                Source = Recalled,
            },
        ],
        SubstitutionGroups = [SampleWorking.Group()],
        Limits = SampleRegulation.Limits(),
        Allergens = SampleRegulation.Allergens(),
        Needs = SampleNeeds.Create(),
    };

    /// <summary>The same with a table that says less.</summary>
    public static CatalogueContent Other()
    {
        var content = Create();
        return content with { FattyAcids = [.. content.FattyAcids.Select(a => a with { MeltingPoint = null })] };
    }
}
