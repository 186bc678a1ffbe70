using Materia.Catalogue;
using Materia.Formulation.Batches;

namespace Materia.Formulation.Costs;

/// <summary>The exact price of a gram of one line's material, or why there is none.</summary>
/// <param name="Line">The line.</param>
/// <param name="PerGram">The price of a gram.</param>
/// <param name="Low">The least by the range of the density.</param>
/// <param name="High">The most by it.</param>
/// <param name="Approximate">True when it hangs on a density.</param>
/// <param name="Reason">Why there is no price.</param>
/// <param name="Text">The reckoning.</param>
internal sealed record LineCost(NormalisedLine Line, decimal PerGram, decimal Low, decimal High, bool Approximate, string? Reason, string Text)
{
    public static LineCost Of(NormalisedLine line, NormalisedPrices prices, Release release)
    {
        if (!prices.ByMaterial.TryGetValue(line.Material, out var price))
        {
            return Without(line, "No price was sent for it.");
        }

        var code = prices.Currency.Code;
        if (price.Grams is { } grams)
        {
            var each = price.Price / grams;
            return new LineCost(line, each, each, each, false, null, $"{Fault.Text(price.Price)} {code} / {Fault.Text(grams)} g");
        }

        if (MeasuredVolume.Density(line, release) is not { } density)
        {
            return Without(line, line.Parts.Any(p => Chemistry.Materials.Kinds.IsPowder(p.Ingredient.Kind))
                ? "Its price is per volume, and how much a volume of powder weighs hangs on how it is packed. Give the price per mass."
                : "Its price is per volume, and its density is not known. Give the price per mass, or describe the material as own with its density.");
        }

        var perMillilitre = price.Price / price.Millilitres!.Value;
        return new LineCost(
            line, perMillilitre / (decimal)density.Value, perMillilitre / (decimal)density.High, perMillilitre / (decimal)density.Low, true, null,
            $"{Fault.Text(price.Price)} {code} / ({Fault.Text(price.Millilitres.Value)} mL × {Fault.Text(decimal.Round((decimal)density.Value, 4))} g/mL)");
    }

    private static LineCost Without(NormalisedLine line, string reason) => new(line, 0, 0, 0, false, reason, string.Empty);
}

/// <summary>An exact sum of money with its range.</summary>
/// <param name="Value">The sum.</param>
/// <param name="Low">The least.</param>
/// <param name="High">The most.</param>
internal readonly record struct ExactCost(decimal Value, decimal Low, decimal High)
{
    public static ExactCost operator +(ExactCost a, ExactCost b) => new(a.Value + b.Value, a.Low + b.Low, a.High + b.High);

    public static ExactCost operator *(ExactCost a, decimal factor) => new(a.Value * factor, a.Low * factor, a.High * factor);

    public static ExactCost Of(LineCost line, decimal grams) => new ExactCost(line.PerGram, line.Low, line.High) * grams;

    /// <summary>The sum to show.</summary>
    public Money In(Currency currency) => Low == High
        ? new(currency.Round(Value), currency.Code)
        : new(currency.Round(Value), currency.Code, currency.Round(Low), currency.Round(High));
}
