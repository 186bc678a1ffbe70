using System.Text.Json;
using Materia.Catalogue;
using Materia.Formulation;

namespace Materia.Benchmarks;

/// <summary>Formulas that the measurements submit.</summary>
internal static class Formulas
{
    /// <summary>A whipped hair mask of twelve lines: butters, oils, a wax, fatty alcohols, clays and an essential oil.</summary>
    public const string TwelveLines =
        """
        {
          "title": "Whipped hair mask of twelve lines", "use": "hair-mask-rinse-off", "market": "eu",
          "lines": [
            { "ingredient": "cupuacu-butter", "percent": 22 },
            { "ingredient": "shea-butter", "percent": 14 },
            { "ingredient": "mango-butter", "percent": 9 },
            { "ingredient": "babassu-oil", "percent": 12.5 },
            { "ingredient": "castor-oil", "percent": 4 },
            { "ingredient": "jojoba-oil", "percent": 6 },
            { "ingredient": "olive-oil", "percent": 8 },
            { "ingredient": "beeswax", "percent": 1.5 },
            { "ingredient": "cetyl-alcohol", "percent": 3 },
            { "ingredient": "kaolin", "percent": 7 },
            { "ingredient": "lavender-oil", "percent": 0.5, "phase": "cool-down" },
            { "ingredient": "sunflower-oil", "balance": true } ],
          "batch": { "mass": 250, "unit": "g", "scaleResolution": 0.1, "lossPercent": 3 },
          "whip": { "overrunPercent": 40 }
        }
        """;

    /// <summary>Reads and normalises a formula.</summary>
    public static NormalisedFormula Normalise(string json, Release release)
    {
        var formula = JsonSerializer.Deserialize<Formula>(json, FormulationJson.Options) ?? throw new InvalidDataException("There is no formula.");
        var normalised = NormalisedFormula.Create(formula, release);
        return normalised.Formula ?? throw new InvalidDataException(string.Join("; ", normalised.Faults));
    }
}
