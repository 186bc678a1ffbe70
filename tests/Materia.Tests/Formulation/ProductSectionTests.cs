using System.Text.Json;
using CsCheck;
using Materia.Formulation;
using Materia.Formulation.Sections;
using Materia.Regulation.Declaring;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation;

/// <summary>The sections on the product as a whole, on the shipped catalogue.</summary>
public sealed class ProductSectionTests
{
    private static readonly EvaluationSection[] Sections =
        [ProductSections.Declaration, ProductSections.Preservation, ProductSections.Emulsion, ProductSections.NaturalOrigin, ProductSections.Cautions];

    private static readonly string[] Ids = [.. SeedCatalogue.Release.Content.Ingredients.Select(i => i.Id)];

    private static readonly Gen<Formula> Random = Gen.Select(
        Gen.Int[0, Ids.Length - 1].Select(i => Ids[i]).Array[1, 12], Gen.Decimal[0.01m, 60m].Array[12], Gen.Enum<Market>(),
        Gen.Int[0, SeedCatalogue.Release.Content.Uses.Count - 1].Select(i => SeedCatalogue.Release.Content.Uses[i].Id), Gen.Decimal[2, 12],
        (ids, masses, market, use, ph) => new Formula
        {
            Use = use,
            Market = market,
            Ph = new() { Value = decimal.Round(ph, 1) },
            Lines = [.. ids.Distinct().Select((id, i) => new FormulaLine { Ingredient = id, Mass = decimal.Round(masses[i], 3), Unit = "g" })],
        });

    [Fact]
    public void Evaluate_AnyFormulaOfTheCatalogue_GivesEverySectionWithKnownSources() => Random.Sample(
        formula =>
        {
            var evaluation = Evaluate(formula);

            JsonSerializer.Serialize(evaluation, FormulationJson.Options).ShouldNotContain("NaN", Case.Sensitive);
            var declaration = evaluation.Of(ProductSections.Declaration)!;
            evaluation.Of(ProductSections.Cautions)!.Select(c => c.Source)
                .Concat(declaration.Rules.Select(r => r.Source)).Concat(declaration.Warnings.Select(w => w.Instrument))
                .Where(s => SeedCatalogue.Release.FindSource(s) is null).ShouldBeEmpty();
        },
        iter: 300);

    // What was weighed in stands on the label: without mixtures the shares of all names but the appended allergens add up to 100.
    [Fact]
    public void Evaluate_FormulaWithoutMixtures_NamesAllOfItsMass() => Random.Sample(
        formula =>
        {
            var single = formula with { Lines = [.. formula.Lines.Where(l => SeedCatalogue.Ingredient(l.Ingredient!).Parts.Count == 0)] };
            if (single.Lines.Count == 0)
            {
                return;
            }

            var entries = Evaluate(single).Of(ProductSections.Declaration)!.Entries;

            entries.Where(e => !e.Rules.Contains("EU-ING-10")).Sum(e => e.Share.Typical).ShouldNotBeNull().ShouldBe(100m, Rounding);
            entries.Where(e => e.Group == DeclarationGroup.Ordered).Select(e => e.Share.Typical).ShouldBe(
                entries.Where(e => e.Group == DeclarationGroup.Ordered).Select(e => e.Share.Typical).OrderDescending());
        },
        iter: 300);

    // Shares are shown to the eighth decimal; twelve of them round by less than this together.
    private const decimal Rounding = 0.0000001m;

    private static Evaluation Evaluate(Formula formula)
    {
        var normalisation = NormalisedFormula.Create(formula, SeedCatalogue.Release);
        normalisation.Faults.ShouldBeEmpty();
        return Evaluator.Evaluate(normalisation.Formula!, SeedCatalogue.Release, new() { Sections = Sections, Explain = true });
    }
}
