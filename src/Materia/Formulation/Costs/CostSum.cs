using Materia.Chemistry;
using Materia.Formulation.Batches;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Costs;

/// <summary>Adds up what a formula costs. Everything is exact until it is shown.</summary>
internal static class CostSum
{
    private const decimal Hundred = 100;

    public static ProductCost Of(EvaluationInput input)
    {
        if (input.Formula.Prices is not { } prices || prices.ByMaterial.Count == 0)
        {
            return new ProductCost { Absent = "No prices were sent. Add \"prices\", such as [ { \"ingredient\": \"shea-butter\", \"price\": 9.50, \"currency\": \"EUR\", \"per\": { \"mass\": 1, \"unit\": \"kg\" } } ]." };
        }

        var all = input.Formula.Lines.Select(l => LineCost.Of(l, prices, input.Release)).ToList();
        var plan = input.Formula.Batch is null ? null : input.Of(BatchPlan.Section);
        decimal[]? grams = plan is { Absent: null } ? [.. plan.Lines.Select(l => l.Mass.Value * input.Formula.Batch!.Unit.Grams)] : null;
        var hundred = all.Aggregate(default(ExactCost), (sum, l) => sum + ExactCost.Of(l, l.Line.Percent));
        ExactCost? batch = grams is null ? null : all.Zip(grams).Aggregate(default(ExactCost), (sum, l) => sum + ExactCost.Of(l.First, l.Second));
        var unpriced = all.Where(l => l.Reason is not null).ToList();
        var packaging = prices.Packaging.Sum(p => p.Each);
        var jars = plan?.Jars;
        return new ProductCost
        {
            Currency = prices.Currency.Code,
            Lines = [.. all.Index().Where(l => l.Item.Reason is null).Select(l => Line(l.Item, grams?[l.Index], (batch ?? hundred).Value, prices.Currency))],
            PerHundredGrams = hundred.In(prices.Currency),
            PerHundredGramsFilled = batch is { } weighed && plan!.LossPercent > 0 ? (weighed * (Hundred / Kept(plan))).In(prices.Currency) : null,
            Batch = batch?.In(prices.Currency),
            BatchWithPackaging = batch is { } sum && jars is not null && prices.Packaging.Count > 0
                ? (sum + Exact(packaging * Math.Min(jars.Full, jars.Wanted ?? jars.Full))).In(prices.Currency)
                : null,
            Jar = batch is { } filled && jars is not null ? Jar(filled * (1 / Kept(plan!)), jars, packaging, prices.Currency) : null,
            Coverage = 1 - (unpriced.Sum(l => l.Line.Percent) / 100),
            Complete = unpriced.Count == 0,
            WithoutPrice = [.. unpriced.Select(l => new UnpricedLine { Ingredient = l.Line.IsOwn ? null : l.Line.Material, Own = l.Line.IsOwn ? l.Line.Material : null, Percent = l.Line.Percent, Reason = l.Reason! })],
            Rounding = $"Sums are exact and each amount is rounded by itself to {Decimals(prices.Currency)}, halves to the even one, so lines need not add up to the last digit of a total. Work, energy, tax and carriage are not counted.",
            Notes = prices.Notes,
            Warnings = [.. Warnings(unpriced, input, plan)],
            Steps = input.Explain ? [.. all.Where(l => l.Reason is null).Select(l => Step(l, prices.Currency))] : null,
        };
    }

    /// <summary>The mass left after the loss [g]; the part of the yield that the scale cannot show is paid for as well.</summary>
    private static decimal Kept(BatchPlan plan) => plan.TotalInGrams!.Value * (1 - (plan.LossPercent!.Value / 100));

    private static ExactCost Exact(decimal amount) => new(amount, amount, amount);

    private static JarCost Jar(ExactCost perGram, JarFilling jars, decimal packaging, Currency currency)
    {
        var materials = new ExactCost(perGram.Value * (decimal)jars.MassInJar, perGram.Low * (decimal)jars.MassInJarLow, perGram.High * (decimal)jars.MassInJarHigh);
        return new JarCost(jars.MassInJar, materials.In(currency), Exact(packaging).In(currency), (materials + Exact(packaging)).In(currency));
    }

    private static CostLine Line(LineCost cost, decimal? grams, decimal total, Currency currency) => new()
    {
        Ingredient = cost.Line.IsOwn ? null : cost.Line.Material,
        Own = cost.Line.IsOwn ? cost.Line.Material : null,
        Percent = cost.Line.Percent,
        PerKilogram = ExactCost.Of(cost, 1000).In(currency),
        InHundredGrams = ExactCost.Of(cost, cost.Line.Percent).In(currency),
        InBatch = grams is { } weighed ? ExactCost.Of(cost, weighed).In(currency) : null,
        SharePercent = total == 0 ? null : decimal.Round(100 * (cost.PerGram * (grams ?? cost.Line.Percent) / total), 2),
        Approximate = cost.Approximate,
    };

    private static IEnumerable<string> Warnings(List<LineCost> unpriced, EvaluationInput input, BatchPlan? plan)
    {
        if (unpriced.Count > 0)
        {
            yield return $"{Fault.Text(unpriced.Sum(l => l.Line.Percent))} % of the mass has no price that counts (see withoutPrice); every sum is that of the other lines only, and the product costs more.";
        }

        if (plan?.Absent is { } absent)
        {
            yield return $"There are no weights for a batch, so only 100 g are reckoned. {absent}";
        }
        else if (plan is not null && plan.Jars is null && input.Formula.Prices!.Packaging.Count > 0)
        {
            yield return "Packaging goes by the jar. Give the batch jarVolume or jarMass to have it counted.";
        }
    }

    private static ExplainedStep Step(LineCost cost, Currency currency) => new()
    {
        What = $"price of {cost.Line.Material}",
        Equation = "price per gram = price / mass, or price / (volume × density); cost = price per gram × grams",
        Arithmetic = $"{cost.Text} = {Fault.Text(decimal.Round(cost.PerGram, 8))} {currency.Code}/g; × {Fault.Text(cost.Line.Percent)} g in 100 g = {Fault.Text(decimal.Round(cost.PerGram * cost.Line.Percent, 6))} {currency.Code}",
    };

    private static string Decimals(Currency currency) => currency.MinorUnits switch
    {
        0 => $"whole {currency.Code}",
        var places => $"{places} decimals of {currency.Code}",
    };
}
