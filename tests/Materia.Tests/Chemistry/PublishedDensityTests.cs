using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry;

/// <summary>Densities against print, each row with its own tolerance.</summary>
public class PublishedDensityTests
{
    /// <summary>Rows that the computation misses, and why; each is held outside its tolerance, so that a change shows.</summary>
    private static readonly Dictionary<string, string> KnownMisses = new(StringComparer.Ordinal)
    {
        ["P111"] = "the catalogue uses The Merck Index (0.8642 at 25 °C); the paper's 0.868 at 10 °C belongs to a lighter oil, 0.7 % off",
    };

    /// <summary>Oils of the rows whose composition is printed nowhere among the checks, and glycerin, which is no fat.</summary>
    private static readonly string[] Unknown = ["milkweed", "lesquerella", "glycerin"];

    public static IEnumerable<TheoryDataRow<string>> Densities() => Rows()
        .Where(r => !Unknown.Contains(r.System))
        .Select(r => new TheoryDataRow<string>(r.Id) { TestDisplayName = r.Title });

    [Theory]
    [MemberData(nameof(Densities))]
    public void Density_PublishedOil_IsWithinItsTolerance(string id)
    {
        var row = CheckFiles.Properties.Single(r => r.Id == id);
        var computed = Compute(row);
        var within = row.Tolerance.Allows(row.Value, computed);
        if (KnownMisses.TryGetValue(id, out var reason))
        {
            within.ShouldBeFalse($"{row.Title} is now met ({computed:0.0}); take it off the list: {reason}");
        }
        else
        {
            within.ShouldBeTrue($"{row.Title}: {computed:0.0} against {row.Value} ({row.Tolerance.Text})");
        }
    }

    [Fact]
    public void Density_RowsWithoutComposition_AreOnlyThoseNamed() =>
        Rows().Where(r => CheckSystems.Find(r.System) is null).Select(r => r.System).Distinct().ShouldBe(Unknown, ignoreOrder: true);

    [Fact]
    public void Density_AllOils_DeviateAsStated()
    {
        // The method states a mean deviation of 0.16 % and a largest of 0.40 % on 44 points, of which these are the ones not withheld.
        var deviations = Rows()
            .Where(r => r.System != "jojoba" && !Unknown.Contains(r.System))
            .Select(r => Math.Abs((Compute(r) / r.Value) - 1))
            .ToList();

        deviations.Count.ShouldBeGreaterThan(25);
        deviations.Average().ShouldBeLessThan(0.002, "0.16 % on the whole set, and a little room for the part that is here");
        deviations.Max().ShouldBeLessThan(0.0045, "0.40 % as rounded, with oils of the same name from another paper standing in");
    }

    [Fact]
    public void Codex_SunflowerRelativeDensity_IsWithinItsRange()
    {
        var row = CheckFiles.Properties.Single(r => r.Quantity == "relative_density_20");
        var density = Material.Of(CheckSystems.Find("sunflower")!, SeedCatalogue.Release, fromCatalogue: false).Density!.At(20).Value;

        var relative = density * 1000 / WaterDensity.At(20);

        row.Tolerance.Allows(row.Value, relative).ShouldBeTrue($"{relative:0.0000} outside {row.Tolerance.Text}");
    }

    private static double Compute(CheckRow row) =>
        1000 * Material.Of(CheckSystems.Find(row.System)!, SeedCatalogue.Release, fromCatalogue: false).Density!.At(row.Temperature!.Value).Value;

    private static IEnumerable<CheckRow> Rows() => CheckFiles.Properties.Where(r => r.Quantity == "density");
}
