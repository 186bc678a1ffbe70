using Materia.Api.Tests.Hosting;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.OwnMaterials;
using Materia.Seed;

namespace Materia.Api.Tests.Figures;

/// <summary>Formulas of the repository's own catalogue to draw.</summary>
internal static class DrawnFormulas
{
    private static readonly Lazy<Release> Catalogue = new(() =>
    {
        var content = SeedReader.Read(Repository.File("seed-data")).Content.ShouldNotBeNull();
        return new Release(1, DateTimeOffset.UnixEpoch, CatalogueJson.Checksum(content), content);
    });

    /// <summary>A butter, an oil and an essential oil of the catalogue, and an oil of the maker's own.</summary>
    public static Evaluation Mask(string title = "Hair mask", string own = "Camellia, lot 12") => Evaluate(new Formula
    {
        Title = title,
        Use = "hair-mask-rinse-off",
        Lines =
        [
            new() { Ingredient = "cupuacu-butter", Percent = 60 },
            new()
            {
                Own = new OwnMaterial
                {
                    Name = own,
                    Kind = IngredientKind.Oil,
                    FattyAcids = [new() { Acid = "18:1n-9", Percent = 85 }, new() { Acid = "18:2n-6", Percent = 15 }],
                },
                Percent = 10,
            },
            new() { Ingredient = "lavender-oil-french-population", Percent = 0.5m },
            new() { Ingredient = "sunflower-oil", Balance = true },
        ],
    });

    /// <summary>A formula evaluated with every section.</summary>
    public static Evaluation Evaluate(Formula formula)
    {
        var normalisation = NormalisedFormula.Create(formula, Catalogue.Value);
        normalisation.Faults.ShouldBeEmpty();
        return Evaluator.Evaluate(normalisation.Formula!, Catalogue.Value, new());
    }
}
