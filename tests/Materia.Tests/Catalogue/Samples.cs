using Materia.Catalogue;

namespace Materia.Tests.Catalogue;

/// <summary>Small records to look up and compare; their figures mean nothing.</summary>
internal static class Samples
{
    public static Ingredient Ingredient(string id) => new()
    {
        Id = id,
        Kind = IngredientKind.Butter,
        Names = [new IngredientName { Text = id, Kind = NameKind.Common, Evidence = Evidence.Memory, Source = "recalled" }],
    };

    public static CatalogueContent Content() => new()
    {
        Ingredients = [Ingredient("a-butter") with { FormerIds = ["old-a"] }, Ingredient("b-butter")],
        Sources = [new Source { Id = "recalled", Kind = SourceKind.Recollection, Title = "Recalled" }],
        FattyAcids =
        [
            new FattyAcid { Symbol = "16:0", Name = "palmitic acid", Carbons = 16, DoubleBonds = 0, MolarMass = 256.43m, Evidence = Evidence.Memory, Source = "recalled" },
        ],
        Uses =
        [
            new ProductUse { Id = "lip-balm", Name = "Lip balm", Exposure = Exposure.LeaveOn, Site = BodySite.Lips, Description = "Stays on.", Evidence = Evidence.Memory, Source = "recalled" },
        ],
    };
}
