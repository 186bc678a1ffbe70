using Materia.Chemistry;
using Materia.Chemistry.Rules;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry;

/// <summary>Iodine and saponification values against print, each row with its own tolerance.</summary>
public class PublishedTitrationTests
{
    /// <summary>Rows that the computation misses, and why; each is held outside its tolerance, so that a change shows.</summary>
    private static readonly Dictionary<string, string> KnownMisses = new(StringComparer.Ordinal)
    {
        ["P016"] = "crude peanut oil: composition and titration of the sample disagree by 7.6, the largest deviation that the method states",
        ["P032"] = "the only sesame sample with a composition (Goering) has unusually much oleic acid; its iodine value is not that of the literature range",
    };

    public static IEnumerable<TheoryDataRow<string>> Factors() => Rows("iodine_value_factor");

    public static IEnumerable<TheoryDataRow<string>> IodineValues() => Rows("iodine_value");

    public static IEnumerable<TheoryDataRow<string>> SaponificationValues() => Rows("saponification_value");

    [Theory]
    [MemberData(nameof(Factors))]
    public void IodineFactor_PrintedTable_IsReproduced(string id)
    {
        var row = Row(id);
        var symbol = row.System.Split(' ')[0].Split(':');
        var (carbons, doubleBonds) = (int.Parse(symbol[0], null), int.Parse(symbol[1], null));
        var mass = MolarMass.OfAcid(carbons, doubleBonds);

        var factor = row.System.EndsWith("triglyceride", StringComparison.Ordinal)
            ? IodineFactor.OfTriglyceride(mass, doubleBonds)
            : IodineFactor.OfSubstance(mass, doubleBonds);

        row.Tolerance.Allows(row.Value, factor).ShouldBeTrue($"{factor:0.0000} against {row.Value} ± {row.Tolerance.Text}");
    }

    [Theory]
    [MemberData(nameof(IodineValues))]
    public void IodineValue_PublishedSample_IsWithinItsTolerance(string id) => Check(id, IodineValue.Of);

    [Theory]
    [MemberData(nameof(SaponificationValues))]
    public void SaponificationValue_PublishedSample_IsWithinItsTolerance(string id) => Check(id, SaponificationValue.Of);

    [Fact]
    public void IodineValue_RyanSamples_DeviateAsStated()
    {
        // The method states, on Ryan's 14 samples, a mean deviation of 3.0 and a largest of 7.6; the ten that are not withheld are here.
        var deviations = CheckFiles.Properties
            .Where(r => r.Quantity == "iodine_value" && r.System.StartsWith("ryan_", StringComparison.Ordinal))
            .Select(r => Math.Abs(IodineValue.Of(TestFat.Blend((CheckSystems.Find(r.System)!, 1))).Value!.Value - r.Value))
            .ToList();

        deviations.Count.ShouldBe(10);
        deviations.Average().ShouldBeLessThan(4);
        deviations.Max().ShouldBeLessThanOrEqualTo(7.6 + 0.05, "the statement is rounded to one decimal");
    }

    [Fact]
    public void SaponificationEquivalent_FreeAcids_AreTheAcidValuesByDefinition()
    {
        foreach (var row in CheckFiles.Properties.Where(r => r.Quantity == "acid_value"))
        {
            var doubleBonds = row.System == "oleic acid" ? 1 : 0;
            var value = SaponificationEquivalent.OfSubstance(MolarMass.OfAcid(18, doubleBonds));
            row.Tolerance.Allows(row.Value, value).ShouldBeTrue($"{row.Title}: {value:0.0}");
        }

        var ratio = CheckFiles.Properties.Single(r => r.Quantity == "naoh_per_koh");
        ratio.Tolerance.Allows(ratio.Value, SaponificationEquivalent.SodiumHydroxideRatio).ShouldBeTrue();
    }

    private static void Check(string id, Func<Blend, ComputedFigure> of)
    {
        var row = Row(id);
        var ingredient = CheckSystems.Find(row.System).ShouldNotBeNull($"no composition stands for {row.System}");
        var figure = of(TestFat.Blend((ingredient, 1)));
        var value = figure.Value.ShouldNotBeNull(figure.Absent);
        var within = row.Tolerance.Allows(row.Value, value);
        if (KnownMisses.TryGetValue(id, out var reason))
        {
            within.ShouldBeFalse($"{row.Title} is now met ({value}); take it off the list: {reason}");
        }
        else
        {
            within.ShouldBeTrue($"{row.Title}: {value:0.0} against {row.Value} ({row.Tolerance.Text})");
        }
    }

    private static CheckRow Row(string id) => CheckFiles.Properties.Single(r => r.Id == id);

    private static IEnumerable<TheoryDataRow<string>> Rows(string quantity) =>
        CheckFiles.Properties.Where(r => r.Quantity == quantity).Select(r => new TheoryDataRow<string>(r.Id) { TestDisplayName = r.Title });
}
