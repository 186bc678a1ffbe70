using System.Text.Json;
using CsCheck;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.Costs;
using Materia.Formulation.OwnMaterials;

namespace Materia.Tests.Formulation;

/// <summary>Whatever is sent gets faults or an evaluation, never an exception.</summary>
public sealed class WildFormulaTests
{
    private static readonly decimal?[] Amounts = [null, decimal.MinValue, -1, 0, 1e-28m, 1e-10m, 0.1m, 1, 33.3333333m, 50, 100, 1e9m, 1e27m, decimal.MaxValue];

    private static readonly Gen<decimal?> Wild = Gen.OneOf(Amounts);

    private static readonly Gen<decimal?> Share = Gen.Frequency((1, Wild), (4, Gen.Int[1, 400].Select(n => (decimal?)(n / 4m))));

    private static readonly Gen<OwnFigure> Figure = Gen.Select(Wild, Wild, Wild, Gen.Int[-200, 500]).Select((value, low, high, temperature) =>
        new OwnFigure { Value = value, Low = low, High = high, At = new() { Temperature = temperature } });

    private static readonly Gen<OwnMaterial> Own = Gen.Select(
        Gen.OneOf(Enum.GetValues<IngredientKind>()), Gen.OneOf("18:0", "18:1n-9", "18:3n-3", "nonsense").List[0, 3], Share, Gen.Select(Gen.OneOf(Enum.GetValues<Property>()), Plausible()).List[0, 5], Gen.Int)
        .Select((kind, acids, share, figures, name) => new OwnMaterial
        {
            Name = $"own {name}",
            Kind = kind,
            FattyAcids = [.. acids.Distinct().Select((a, i) => new OwnFattyAcid { Acid = a, Percent = i == 0 && acids.Count == 1 ? 100 : share })],
            Figures = figures.DistinctBy(f => f.Item1).ToDictionary(f => f.Item1, f => f.Item2 with { Unit = PropertyDefinition.All[f.Item1].Unit }),
        });

    private static readonly Gen<FormulaLine> Line = Gen.Select(Gen.OneOf("olive-oil", "kaolin", "squalane", "nonsense", null), Own, Share, Wild, Gen.OneOf("g", "oz", "ml", null), Gen.Int[0, 9])
        .Select((id, own, percent, mass, unit, way) => new FormulaLine
        {
            Ingredient = way == 0 ? null : id,
            Own = id is null ? own : null,
            Percent = way == 1 ? null : percent,
            Mass = way == 2 ? mass : null,
            Unit = way == 2 ? unit : null,
            Balance = way == 1 ? true : null,
        });

    private static readonly Gen<FormulaBatch> Batch = Gen.Select(Wild, Wild, Wild, Wild, Gen.OneOf<int?>(null, -1, 0, 1, 100_000, int.MaxValue), Gen.OneOf("g", "kg", "mg", "lb", null))
        .Select((mass, step, loss, volume, jars, unit) => new FormulaBatch
        {
            Mass = mass,
            ScaleResolution = step,
            LossPercent = loss,
            JarVolume = jars > 1 ? null : volume,
            JarMass = jars > 1 ? volume : null,
            Volume = mass is null ? volume : null,
            Jars = jars,
            Unit = unit,
        });

    private static readonly Gen<FormulaPrice> Price = Gen.Select(Wild, Wild, Gen.OneOf("g", "mL", "oz", null), Gen.OneOf("EUR", "JPY", "nonsense", null), Gen.Int[0, 9])
        .Select((price, amount, unit, currency, way) => new FormulaPrice
        {
            Ingredient = way == 0 ? "kaolin" : "olive-oil",
            Price = price,
            Currency = currency,
            Per = new() { Mass = way < 5 ? amount : null, Volume = way < 5 ? null : amount, Unit = unit },
        });

    [Fact]
    public void Create_AnythingAtAll_GivesFaultsOrAFormula() =>
        Gen.Select(Line.List[0, 6], Batch, Wild).Sample(
            (lines, batch, overrun) =>
            {
                var result = NormalisedFormula.Create(new Formula { Lines = lines, Batch = batch, Whip = new() { OverrunPercent = overrun } }, TestCatalogue.Release);
                return (result.Formula is null) == (result.Faults.Count > 0);
            },
            iter: 20_000);

    [Fact]
    public void Evaluate_AnyOwnMaterialThatIsTaken_CanBeWritten()
    {
        var taken = 0;
        Gen.Select(Own, Gen.Int[1, 99], Batch, Price).Sample(
            (own, percent, batch, price) =>
            {
                var lines = new[] { Formulas.Own(own, percent), Formulas.Balance("olive-oil") };
                foreach (var formula in (Formula[])[Formulas.Of(lines), Formulas.Of(lines) with { Batch = batch, Whip = new() { OverrunPercent = 300 } }, Formulas.Of(lines) with { Prices = [price] },
                    Formulas.Of(lines) with { Batch = batch, Prices = [price], Packaging = [new() { Name = "jar", Price = price.Price, Currency = "EUR" }] }])
                {
                    if (NormalisedFormula.Create(formula, TestCatalogue.Release).Formula is { } normalised)
                    {
                        var evaluation = Evaluator.Evaluate(normalised, TestCatalogue.Release, new() { Explain = true });
                        JsonSerializer.Serialize(evaluation, FormulationJson.Options).ShouldNotContain("NaN", Case.Sensitive);
                        Interlocked.Increment(ref taken);
                    }
                }
            },
            iter: 5_000);
        taken.ShouldBeGreaterThan(500);
    }

    // Values over the whole plausible band of each property, at any temperature that is taken: the corners of what may reach a model.
    private static Gen<OwnFigure> Plausible() => Gen.Select(Figure, Gen.Double[0.6, 7], Gen.Int[0, 9], Gen.Int[-100, 400]).Select((wild, value, way, temperature) =>
        way == 0 ? wild : new OwnFigure { Value = decimal.Round((decimal)value, 4), At = way < 5 ? new() { Temperature = temperature } : null });
}
