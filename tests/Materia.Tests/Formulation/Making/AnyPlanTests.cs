using System.Text.Json;
using CsCheck;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.Making;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Making;

/// <summary>What holds of the plan of any formula.</summary>
public sealed class AnyPlanTests
{
    private static readonly Gen<Formula> Any = Gen.Select(
        Gen.Int[0, 100_000].List[1, 9],
        Gen.OneOf<Phase?>(null, null, null, null, Phase.Oil, Phase.Water, Phase.Powder, Phase.CoolDown).List[9, 9],
        Gen.Int[1, 40].List[9, 9],
        Gen.Int[5, 40],
        Gen.Int[-30, 20],
        Gen.OneOf<decimal?>(null, 0.01m, 250m, 3000m, 9_000_000m),
        Gen.OneOf<decimal?>(null, null, 0m, 40m, 300m)).Select((picks, phases, parts, room, chill, mass, overrun) =>
        {
            var all = SeedCatalogue.Release.Content.Ingredients;
            return new Formula
            {
                Lines = [.. picks.Select((p, i) => new FormulaLine { Ingredient = all[p % all.Count].Id, Mass = parts[i], Unit = "g", Phase = phases[i] })],
                Batch = mass is null ? null : new() { Mass = mass, Unit = "g", ScaleResolution = 0.001m },
                Whip = overrun is null ? null : new() { OverrunPercent = overrun },
                Making = new() { Room = room, Chill = Math.Min(chill, room - 1) },
            };
        });

    [Fact]
    public void Plan_AnyFormula_HoldsTogether() => Any.Sample(
        formula =>
        {
            var plan = Plans.Of(formula);

            plan.Steps.Select(s => s.Number).ShouldBe(Enumerable.Range(1, plan.Steps.Count));
            plan.Steps.SelectMany(s => s.Ingredients).Select(i => i.Line).Order().ShouldBe(Enumerable.Range(0, formula.Lines.Count));
            foreach (var step in plan.Steps)
            {
                step.Action.ShouldNotBeNullOrWhiteSpace();
                step.WatchFor.ShouldNotBeNullOrWhiteSpace();
                step.Ingredients.ShouldAllBe(i => i.Because.Length > 0 && i.Source.Length > 0);
                foreach (var cap in step.Ingredients.Select(i => i.NotAbove).OfType<double>())
                {
                    (step.Temperature!.High <= cap && step.Temperature.Value <= cap).ShouldBeTrue($"{step.Phase} at {step.Temperature} though the cap is {cap}");
                }

                foreach (var figure in (PlanFigure?[])[step.Temperature, step.Duration])
                {
                    (figure is null || (double.IsFinite(figure.Low) && double.IsFinite(figure.High) && figure.Low <= figure.Value && figure.Value <= figure.High)).ShouldBeTrue($"{step.Phase} {figure}");
                }
            }

            var text = JsonSerializer.Serialize(plan, FormulationJson.Options);
            (text.Contains("NaN", StringComparison.Ordinal) || text.Contains("Infinity", StringComparison.Ordinal)).ShouldBeFalse();
        },
        iter: 1500);

    // A cool-down addition always carries a cap, so that the property above is never empty of cases.
    [Fact]
    public void Plan_EssentialOilInAnyFormula_CarriesItsCap() => Gen.Int[0, 100_000].Sample(
        pick =>
        {
            var oils = SeedCatalogue.Release.Content.Ingredients.Where(i => i.Kind == IngredientKind.EssentialOil).ToList();
            var plan = Plans.Of(new Formula { Lines = [new() { Ingredient = "shea-butter", Percent = 99 }, new() { Ingredient = oils[pick % oils.Count].Id, Percent = 1 }] });
            plan.Steps.SelectMany(s => s.Ingredients).Single(i => i.Line == 1).NotAbove.ShouldNotBeNull();
        },
        iter: 80);
}
