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
