using System.Text.Json;
using Materia.Formulation;
using Materia.Formulation.Making;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Making;

/// <summary>Formulas whose plans are read, on the real catalogue.</summary>
internal static class Plans
{
    public const string WhippedMask = """
        { "title": "Whipped mask with clay", "use": "hair-mask-rinse-off",
          "lines": [ { "ingredient": "cupuacu-butter", "percent": 30 }, { "ingredient": "shea-butter", "percent": 12 }, { "ingredient": "babassu-oil", "percent": 22 },
                     { "ingredient": "cetyl-alcohol", "percent": 3 }, { "ingredient": "kaolin", "percent": 8 }, { "ingredient": "lavender-oil", "percent": 0.5 },
                     { "ingredient": "sunflower-oil", "balance": true } ],
          "batch": { "mass": 250, "unit": "g", "scaleResolution": 0.1 }, "whip": { "overrunPercent": 40 },
          "making": { "heaterPower": { "value": 600, "unit": "W" }, "room": 20, "chill": 4, "vessel": "steel-bowl" } }
        """;

    public const string WaxBalm = """
        { "title": "Firm balm", "lines": [ { "ingredient": "beeswax", "percent": 22 }, { "ingredient": "shea-butter", "percent": 25 }, { "ingredient": "lavender-oil", "percent": 1 },
                     { "ingredient": "mixed-tocopherols", "percent": 0.5 }, { "ingredient": "almond-oil", "balance": true } ],
          "batch": { "mass": 300, "unit": "g", "jars": 6, "jarVolume": 50 } }
        """;

    public const string OilBlend = """
        { "title": "Hair oil", "lines": [ { "ingredient": "jojoba-oil", "percent": 40 }, { "ingredient": "argan-oil", "percent": 30 }, { "ingredient": "castor-oil", "percent": 10 },
                     { "ingredient": "rosemary-oil-verbenone", "percent": 1 }, { "ingredient": "sunflower-oil", "balance": true } ] }
        """;

    public const string Cream = """
        { "title": "Cream", "lines": [ { "ingredient": "water", "percent": 65 }, { "ingredient": "glycerin", "percent": 4 }, { "ingredient": "xanthan-gum", "percent": 0.3 },
                     { "ingredient": "cetearyl-olivate-sorbitan-olivate", "percent": 5 }, { "ingredient": "cetyl-alcohol", "percent": 2 }, { "ingredient": "shea-butter", "percent": 5 },
                     { "ingredient": "phenoxyethanol-ethylhexylglycerin", "percent": 1 }, { "ingredient": "lavender-oil", "percent": 0.3 }, { "ingredient": "sunflower-oil", "balance": true } ],
          "batch": { "mass": 200, "unit": "g" } }
        """;

    public const string Powder = """
        { "title": "Dry shampoo", "lines": [ { "ingredient": "kaolin", "percent": 20 }, { "ingredient": "corn-starch", "percent": 70 }, { "ingredient": "zinc-oxide", "percent": 2 },
                     { "ingredient": "lavender-oil", "percent": 0.5 }, { "ingredient": "jojoba-oil", "percent": 1 }, { "ingredient": "calcium-carbonate", "balance": true } ] }
        """;

    public static ProcessPlan Of(string json) => Of(JsonSerializer.Deserialize<Formula>(json, FormulationJson.Options)!);

    public static ProcessPlan Of(Formula formula)
    {
        var result = NormalisedFormula.Create(formula, SeedCatalogue.Release);
        result.Faults.ShouldBeEmpty();
        return Evaluator.Evaluate(result.Formula!, SeedCatalogue.Release, new EvaluationOptions { Sections = [ProcessPlan.Section] }).Of(ProcessPlan.Section).ShouldNotBeNull();
    }
}
