using System.Globalization;
using Materia.Catalogue;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry;

public class ExplanationTests
{
    private static (Ingredient, double)[] Parts() =>
    [
        (SeedCatalogue.Ingredient("shea-butter"), 0.4), (SeedCatalogue.Ingredient("castor-oil"), 0.1), (SeedCatalogue.Ingredient("jojoba-oil"), 0.2),
        (SeedCatalogue.Ingredient("sunflower-oil"), 0.2), (SeedCatalogue.Ingredient("kaolin"), 0.1),
    ];

    [Fact]
    public void Steps_WhenAskedFor_NameEveryInputWithItsSource()
    {
        var blend = TestFat.Explained(Parts());
        IReadOnlyList<ExplainedStep>?[] all =
        [
            FattyAcidComposition.Of(blend).Steps, IodineValue.Of(blend).Steps, SaponificationValue.Of(blend).Steps,
            BlendDensity.Of(blend).Steps, BlendFlow.Of(blend).Steps, BlendOxidation.Of(blend).CoxValue.Steps,
        ];

        foreach (var steps in all)
        {
            steps.ShouldNotBeNull().ShouldNotBeEmpty();
            steps.ShouldAllBe(s => s.What.Length > 0 && s.Equation.Length > 0 && s.Arithmetic.Length > 0);
            var inputs = steps.SelectMany(s => s.Inputs).ToList();
            inputs.ShouldNotBeEmpty();
            inputs.ShouldAllBe(i => SeedCatalogue.Release.FindSource(i.Source) != null);
        }
    }

    [Fact]
    public void MeltingSteps_EveryInput_NamesSourceAndGrade()
    {
        var steps = BlendMelting.Of(TestFat.Explained([.. Parts(), (SeedCatalogue.Ingredient("beeswax"), 0.1), (SeedCatalogue.Ingredient("cetyl-alcohol"), 0.1)])).Steps!;
        var inputs = steps.SelectMany(s => s.Inputs).ToList();
        string[] grades = ["published", "secondary", "common-practice", "memory", "set-by-method"];

        inputs.ShouldAllBe(i => grades.Contains(i.Evidence));
        inputs.ShouldAllBe(i => i.Evidence == "set-by-method" ? Methods.All.ContainsKey(i.Source) : SeedCatalogue.Release.FindSource(i.Source) != null);

        // SOS melts at 43.0 °C in print (arishima-1991, abstract, read); its heat is the correlation's, seen at second hand.
        inputs.ShouldContain(i => i.Ingredient == "SOS" && i.What == "melting point" && i.Source == "arishima-1991" && i.Evidence == "published");
        inputs.ShouldContain(i => i.Ingredient == "SOS" && i.What == "enthalpy of fusion" && i.Source == "wesdorp-1990" && i.Evidence == "secondary");
        steps.Single(s => s.What.StartsWith("Most abundant", StringComparison.Ordinal)).Arithmetic.ShouldContain("arishima-1991, published");
        steps.Single(s => s.What.StartsWith("Pure", StringComparison.Ordinal)).Arithmetic.ShouldContain("[wesdorp-1990, secondary]");
    }

    [Fact]
    public void Steps_NotAskedFor_AreLeftOut()
    {
        var blend = TestFat.Blend(Parts());

        IodineValue.Of(blend).Steps.ShouldBeNull();
        BlendFlow.Of(blend).Steps.ShouldBeNull();
        FattyAcidComposition.Of(blend).Steps.ShouldBeNull();
    }

    [Fact]
    public void IodineValue_LastStep_EndsInTheResult()
    {
        var figure = IodineValue.Of(TestFat.Explained(Parts()));

        var written = figure.Steps![^1].Arithmetic.Split('=')[^1].Trim().Split(' ')[0];

        // The arithmetic carries five significant digits, the result two decimals.
        double.Parse(written, CultureInfo.InvariantCulture).ShouldBe(figure.Value!.Value, 0.01);
    }

    [Fact]
    public void Steps_ForeignCulture_WritePointsAllTheSame()
    {
        var before = CultureInfo.CurrentCulture;
        var expected = IodineValue.Of(TestFat.Explained(Parts())).Steps!.Select(s => s.Arithmetic).ToList();
        try
        {
            var foreign = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            foreign.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = foreign;

            IodineValue.Of(TestFat.Explained(Parts())).Steps!.Select(s => s.Arithmetic).ShouldBe(expected);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
