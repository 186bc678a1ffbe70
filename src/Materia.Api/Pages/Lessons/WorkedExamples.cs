using System.Collections.Frozen;
using Materia.Api.Pages.Formulas;
using Materia.Chemistry;
using Materia.Formulation;
using Materia.Formulation.Batches;
using Materia.Formulation.Sections;
using Materia.Regulation.Declaring;

namespace Materia.Api.Pages.Lessons;

/// <summary>The worked examples by method.</summary>
public static class WorkedExamples
{
    private static readonly Formula Lotion = new()
    {
        Title = "A simple lotion",
        Use = "body-lotion",
        Market = Market.Eu,
        Ph = new() { Value = 5 },
        Lines =
        [
            new() { Ingredient = "sweet-almond-oil", Percent = 18 }, new() { Ingredient = "sorbitan-oleate", Percent = 2 }, new() { Ingredient = "polysorbate-80", Percent = 3 },
            new() { Ingredient = "glycerin", Percent = 5 }, new() { Ingredient = "sodium-benzoate", Percent = 0.5m }, new() { Ingredient = "water", Balance = true },
        ],
    };

    private static readonly FrozenDictionary<string, WorkedExample> ByMethod = new Dictionary<string, WorkedExample>(StringComparer.Ordinal)
    {
        ["fatty-acids-by-mass"] = Of(ExampleFormulas.Balm, ChemistrySections.FattyAcids, r => r.Steps),
        ["guaranteed-bounds"] = Of(ExampleFormulas.Balm, ChemistrySections.FattyAcids, r => r.Steps),
        ["iodine-value"] = Of(ExampleFormulas.Mask, ChemistrySections.IodineValue, r => r.Steps),
        ["saponification-value"] = Of(ExampleFormulas.Mask, ChemistrySections.SaponificationValue, r => r.Steps),
        ["sodium-hydroxide-demand"] = Of(ExampleFormulas.Mask, ChemistrySections.SaponificationValue, r => r.Steps),
        ["melting-class-solutions"] = Of(ExampleFormulas.Balm, ChemistrySections.Melting, r => r.Steps),
        ["density-additive-volumes"] = Of(ExampleFormulas.Balm, FormulaDensity.Section, r => r.Steps),
        ["density-lund"] = Of(ExampleFormulas.Oil, FormulaDensity.Section, r => r.Steps),
        ["relative-density"] = Of(ExampleFormulas.Oil, FormulaDensity.Section, r => r.Steps),
        ["whipped-density"] = Of(ExampleFormulas.Mask, FormulaDensity.Section, r => r.Steps?.TakeLast(1)),
        ["viscosity-log-volume"] = Of(ExampleFormulas.Oil, ChemistrySections.Flow, r => r.Steps),
        ["viscosity-oil-coefficients"] = Of(ExampleFormulas.Oil, ChemistrySections.Flow, r => r.Steps),
        ["viscosity-oil-composition"] = Of(ExampleFormulas.Oil, ChemistrySections.Flow, r => r.Steps),
        ["suspension-maron-pierce"] = Of(ExampleFormulas.Mask, ChemistrySections.Flow, r => r.Steps),
        ["cox-value"] = Of(ExampleFormulas.Oil, ChemistrySections.Oxidation, r => r.CoxValue.Steps),
        ["peroxidizability-index"] = Of(ExampleFormulas.Oil, ChemistrySections.Oxidation, r => r.PeroxidizabilityIndex?.Steps ?? r.CoxValue.Steps),
        ["storage-rate-q10"] = Of(ExampleFormulas.Oil, ChemistrySections.Oxidation, r => r.RateAt30To20.Steps),
        ["tocopherol-sum"] = Of(ExampleFormulas.Oil, ChemistrySections.Oxidation, r => r.Tocopherols?.Steps),
        ["required-hlb"] = Of(Lotion, ProductSections.Emulsion, r => r.RequiredOilInWater.Steps),
        ["natural-origin-content"] = Of(Lotion, ProductSections.NaturalOrigin, r => r.WithWater.Steps),
        ["free-water"] = Of(Lotion, ProductSections.Preservation, r => r.Steps),
        ["water-activity-norrish"] = Of(Lotion, ProductSections.Preservation, r => r.WaterActivity.Steps),
        ["preservation-check"] = Of(Lotion, ProductSections.Preservation, r => r.Steps),
        ["batch-weights"] = Of(ExampleFormulas.Mask, BatchPlan.Section, r => r.Steps),
        [Declaration.MethodKey] = Of(ExampleFormulas.Mask, ProductSections.Declaration, r => r.Steps?.Select(Step)),
        ["substance-roll-up"] = Of(ExampleFormulas.Mask, RegulationSections.Limits, r => r.Take(5).Select(l => Step(l.Substance, l.Contributions, l.Amount.High))),
        ["allergen-declaration"] = Of(ExampleFormulas.Mask, RegulationSections.Allergens, r => r.Take(5).Select(a => Step(a.DeclarationName, a.Contributions, a.Amount.High))),
        ["caution-rules"] = Of(ExampleFormulas.Mask, ProductSections.Cautions, r => r.Select(c => new ExplainedStep { What = c.Hazard, Equation = c.When, Arithmetic = c.WhatToDo })),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The example of a method, or <see langword="null"/> where a formula cannot show it.</summary>
    public static WorkedExample? Of(string method) => ByMethod.GetValueOrDefault(method);

    private static WorkedExample Of<T>(Formula formula, EvaluationSection<T> section, Func<T, IEnumerable<ExplainedStep>?> steps)
        where T : class => new(formula, [section], e => e.Of(section) is { } result ? [.. steps(result) ?? []] : []);

    private static ExplainedStep Step(DeclarationStep step) => new() { What = step.Name, Equation = step.Place, Arithmetic = step.Arithmetic };

    private static ExplainedStep Step(string what, IReadOnlyList<Regulation.Contribution> contributions, decimal sum) => new()
    {
        What = what,
        Equation = "Σ p × s / 100",
        Arithmetic = $"{string.Join(" + ", contributions.Select(c => $"{Figures.Written.Number(c.Percent)} × {Figures.Written.Number(c.ShareOfIngredient.High)} / 100"))} = {Figures.Written.Number(sum)} %",
    };
}
