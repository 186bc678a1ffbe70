using Materia.Catalogue;

namespace Materia.Tests.Search;

/// <summary>A piece of the table of fatty acids: names and formulas are textbook ones, masses follow from the formulas.</summary>
internal static class SampleAcids
{
    public static IReadOnlyList<FattyAcid> Table { get; } =
    [
        Acid("12:0", "lauric", 12, 0, 200.32m),
        Acid("16:0", "palmitic", 16, 0, 256.43m),
        Acid("18:0", "stearic", 18, 0, 284.48m),
        Acid("18:1", "octadecenoic, undifferentiated", 18, 1, 282.47m),
        Acid("18:1n-9", "oleic", 18, 1, 282.47m),
        Acid("18:1n-7", "vaccenic", 18, 1, 282.47m),
        Acid("18:1n-9t", "elaidic", 18, 1, 282.47m),
        Acid("18:1n-9-12OH", "ricinoleic", 18, 1, 298.47m) with { Hydroxyls = 1 },
        Acid("18:1-12,13ep", "vernolic", 18, 1, 296.45m),
        Acid("18:1n-9-ol", "oleyl alcohol", 18, 1, 268.49m) with { Alcohol = true },
        Acid("18:2n-6", "linoleic", 18, 2, 280.45m),
        Acid("18:3n-3", "alpha-linolenic", 18, 3, 278.44m),
        Acid("20:1n-9", "gondoic", 20, 1, 310.52m),
        Acid("cyc-18:1", "malvalic", 18, 1, 280.45m),
    ];

    private static FattyAcid Acid(string symbol, string name, int carbons, int doubleBonds, decimal mass) => new()
    {
        Symbol = symbol,
        Name = name,
        Carbons = carbons,
        DoubleBonds = doubleBonds,
        MolarMass = mass,
        Evidence = Evidence.Memory,
        Source = "recalled",
    };
}
