using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry;

/// <summary>
/// Kinematic viscosities against print. The composition model was fitted to part of these rows, so they check the code and hold the
/// stated error; the rows of Karaosmanoglu and Goodrum were not fitted.
/// </summary>
public class PublishedViscosityTests
{
    /// <summary>Rows that the composition model misses, and why; each is held outside its tolerance, so that a change shows.</summary>
    private static readonly Dictionary<string, string> KnownMisses = new(StringComparer.Ordinal)
    {
        ["P148"] = "10.7 % against 10 %: the sesame sample with unusually much oleic acid, and a temperature (38 or 40 °C) that is not sure",
        ["P152"] = "11 % against 10 %: the rapeseed rows of that paper are labelled the other way round, and its temperature (38 or 40 °C) is not sure",
        ["P156"] = "13.5 % against 12 %: this peanut oil is 13 % thicker than the other measured peanut oils",
        ["P170"] = "1.2 against 1.04: a figure rounded to a whole number (9), with the composition of another rapeseed oil standing in",
    };

    private static readonly string[] Unknown = ["milkweed", "lesquerella"];

    public static IEnumerable<TheoryDataRow<string>> Oils() => Rows()
        .Where(r => r.System != "jojoba" && !Unknown.Contains(r.System))
        .Select(r => new TheoryDataRow<string>(r.Id) { TestDisplayName = r.Title });

    public static IEnumerable<TheoryDataRow<string, string>> NamedOils() => Rows()
        .Where(r => Named(r.System) is { } oil && r.Temperature >= oil.From && r.Temperature <= oil.To)
        .Select(r => new TheoryDataRow<string, string>(r.Id, r.System) { TestDisplayName = $"{r.Title}, coefficients fitted to it" });

    [Theory]
    [MemberData(nameof(Oils))]
    public void OfComposition_PublishedSample_IsWithinItsTolerance(string id)
    {
        var row = CheckFiles.Properties.Single(r => r.Id == id);
        var computed = FromComposition(row);
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
    public void OfComposition_EveryRow_IsWithinTheErrorThatIsShown()
    {
        // The range that users see is ±15 %; half a unit more for figures that the compilation rounds to whole numbers.
        foreach (var row in Rows().Where(r => r.System != "jojoba" && !Unknown.Contains(r.System)))
        {
            var computed = FromComposition(row);
            Math.Abs(computed - row.Value).ShouldBeLessThanOrEqualTo((WaltherViscosity.Error * row.Value) + 0.5, $"{row.Title}: {computed:0.0} against {row.Value}");
        }
    }

    [Theory]
    [MemberData(nameof(NamedOils))]
    public void OfOil_PublishedSample_IsWithinItsTolerance(string id, string system)
    {
        var row = CheckFiles.Properties.Single(r => r.Id == id);
        var oil = Named(system)!;

        var computed = WaltherViscosity.FromOrdinate(WaltherViscosity.OfOil(oil.A, oil.B, row.Temperature!.Value));

        row.Tolerance.Allows(row.Value, computed).ShouldBeTrue($"{computed:0.0} against {row.Value} ({row.Tolerance.Text})");
    }

    [Fact]
    public void Table_EveryOil_IsInTheCatalogue() =>
        OilViscosity.Table.Keys.Where(id => SeedCatalogue.Release.FindIngredient(id) is null).ShouldBeEmpty();

    [Fact]
    public void RejectedRows_AreOutsideWhatTheOthersAllow()
    {
        // Kept in the file to show how sources scatter: 25 to 40 % above three independent groups.
        var oil = OilViscosity.Table["castor-oil"];
        foreach (var row in CheckFiles.Properties.Where(r => r.IsRejected))
        {
            var computed = WaltherViscosity.FromOrdinate(WaltherViscosity.OfOil(oil.A, oil.B, row.Temperature!.Value));
            (row.Value / computed).ShouldBeGreaterThan(1.15, row.Title);
        }
    }

    private static double FromComposition(CheckRow row)
    {
        var acids = Material.Of(CheckSystems.Find(row.System)!, SeedCatalogue.Release, fromCatalogue: false).Acids!;
        return WaltherViscosity.FromOrdinate(
            WaltherViscosity.OfComposition(acids.MeanCarbons, acids.MeanDoubleBonds, acids.MeanHydroxyls, row.Temperature!.Value));
    }

    private static OilViscosity? Named(string system) => system switch
    {
        "castor" => OilViscosity.Table["castor-oil"],
        "coconut" => OilViscosity.Table["coconut-oil"],
        "crambe" => OilViscosity.Table["crambe-oil"],
        "jojoba" => OilViscosity.Table["jojoba-oil"],
        "magne_soybean" => OilViscosity.Table["soybean-oil"],
        "magne_cottonseed" => OilViscosity.Table["cottonseed-oil"],
        _ => null,
    };

    private static IEnumerable<CheckRow> Rows() => CheckFiles.Properties.Where(r => r.Quantity == "kinematic_viscosity" && !r.IsRejected);
}
