using System.Globalization;
using Materia.Catalogue;
using Materia.Formulation.Designing;
using Materia.Formulation.Optimising;
using Materia.Formulation.OwnMaterials;
using Materia.Tests.Checks;

namespace Materia.Tests.Formulation.Optimising;

/// <summary>The linear designs of <c>tests/linear-programmes</c>, and what GLPK printed for them.</summary>
internal static class ReferenceProgrammes
{
    /// <summary>The names of the cases.</summary>
    public static TheoryData<string> Names => [.. Rows("cases.csv").Select(r => r["case"])];

    /// <summary>What GLPK printed.</summary>
    public static double LeastDistance(string name) => Number(Rows("results.csv").Single(r => r["case"] == name), "distance");

    /// <summary>The shares that GLPK printed.</summary>
    public static IEnumerable<(string Material, double Percent)> Shares(string name)
    {
        var row = Rows("results.csv").Single(r => r["case"] == name);
        return Rows("materials.csv").Select(m => (m["id"], Number(row, m["id"])));
    }

    /// <summary>The case as a request for a design.</summary>
    public static DesignRequest Request(string name)
    {
        var row = Rows("cases.csv").Single(r => r["case"] == name);
        return new DesignRequest
        {
            Pantry = [.. Rows("materials.csv").Select(Material)],
            Targets =
            [
                Range(BlendProperty.IodineValue, Decimal(row, "iodine_low"), Decimal(row, "iodine_high")),
                Range(BlendProperty.SaponificationValue, Decimal(row, "saponification_low"), Decimal(row, "saponification_high")),
                Range(BlendProperty.Cost, null, Decimal(row, "cost_high")),
            ],
            Constraints =
            [
                new() { Ingredient = "alpha", MaxPercent = Decimal(row, "alpha_max") },
                new() { Ingredient = "zeta", MaxPercent = Decimal(row, "zeta_max") },
                new() { Ingredient = "eta", MinPercent = Decimal(row, "eta_min") },
            ],
            TimeBudget = 10,
        };
    }

    private static PantryItem Material(Dictionary<string, string> row) => new()
    {
        PricePerKilogram = Decimal(row, "price"),
        Own = new OwnMaterial
        {
            Name = row["id"],
            Kind = IngredientKind.Ester,
            Figures = new()
            {
                [Property.IodineValue] = new OwnFigure { Value = Decimal(row, "iodine"), Unit = Units.GramPerHundredGram },
                [Property.SaponificationValue] = new OwnFigure { Value = Decimal(row, "saponification"), Unit = Units.MilligramPerGram },
            },
        },
    };

    private static DesignTarget Range(BlendProperty property, decimal? low, decimal? high) => new() { Property = property, Low = low, High = high };

    private static List<Dictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(CheckFiles.Root(), "tests", "linear-programmes", file));
        var header = lines[0].Split(',');
        return [.. lines.Skip(1).Select(l => header.Zip(l.Split(',')).ToDictionary(p => p.First, p => p.Second))];
    }

    private static decimal Decimal(Dictionary<string, string> row, string column) => decimal.Parse(row[column], CultureInfo.InvariantCulture);

    private static double Number(Dictionary<string, string> row, string column) => double.Parse(row[column], CultureInfo.InvariantCulture);
}
