using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry;

/// <summary>How one ingredient's iodine or saponification value came about.</summary>
internal static class TitrationSteps
{
    public static ExplainedStep OfComponent(string name, Material material, Titration titration, string what, string symbol, string unit)
    {
        var value = Written.Number(titration.Value.Value);
        var range = $"range {Written.Number(titration.Value.Low)} to {Written.Number(titration.Value.High)} {unit}";
        return titration.Basis switch
        {
            TitrationBasis.Composition => new ExplainedStep
            {
                What = $"{what} of {name} from its fatty acids",
                Equation = Equation(symbol, material),
                Arithmetic = $"{Numbers(symbol, material)} = {value} {unit} ({range})",
                Inputs = [.. Profiles(name, material)],
            },
            TitrationBasis.Measured => new ExplainedStep
            {
                What = $"{what} of {name} as measured or specified",
                Equation = $"{symbol} = the stored figure",
                Arithmetic = $"{symbol} = {value} {unit} ({range})",
                Inputs = [StoredFigures.Cite(name, titration.Stored!)],
            },
            _ => new ExplainedStep
            {
                What = $"{what} of {name} by its chemical nature",
                Equation = $"{symbol} = 0",
                Arithmetic = $"{symbol} = 0 {unit} ({range})",
                Inputs = titration.Stored is null ? [] : [StoredFigures.Cite(name, titration.Stored)],
            },
        };
    }

    private static bool IsIodine(string symbol) => symbol == "IV";

    private static string Equation(string symbol, Material material)
    {
        if (material.IsWaxEster)
        {
            return IsIodine(symbol)
                ? "IV = 100 × 253.809 (D_acid + D_alcohol) / (M_acid + M_alcohol − 18.015)"
                : "SV = 56106 / (M_acid + M_alcohol − 18.015)";
        }

        return (IsIodine(symbol), material.Ingredient.Kind == IngredientKind.FattyAcid) switch
        {
            (true, true) => "IV = Σ p 253.809 D / M",
            (true, false) => "IV = Σ p 253.809 × 3 D / (3 M + 38.049) × (1 − U/100)",
            (false, true) => "SV = 56106 / M",
            (false, false) => "SV = 3000 × 56.106 / (3 M + 38.049) × (1 − U/100), M the mean by moles",
        };
    }

    private static string Numbers(string symbol, Material material)
    {
        if (material.Acids is not { } acids)
        {
            return symbol;
        }

        if (material.IsWaxEster)
        {
            var ester = acids.MeanMolarMass + material.Alcohols!.MeanMolarMass - MolarMass.Water;
            return IsIodine(symbol)
                ? $"100 × 253.809 × {Written.Number(acids.MeanDoubleBonds + material.Alcohols.MeanDoubleBonds)} / {Written.Number(ester)}"
                : $"56106 / {Written.Number(ester)}";
        }

        var unsaponifiable = material.UnsaponifiableFigure is null ? "" : $" × (1 − {Written.Number(material.Unsaponifiable.Value)}/100)";
        if (!IsIodine(symbol))
        {
            return material.Ingredient.Kind == IngredientKind.FattyAcid
                ? $"56106 / {Written.Number(acids.MeanMolarMass)}{unsaponifiable}"
                : $"168318 / (3 × {Written.Number(acids.MeanMolarMass)} + 38.049){unsaponifiable}";
        }

        var free = material.Ingredient.Kind == IngredientKind.FattyAcid;
        var terms = new List<string>();
        for (var i = 0; i < acids.Acids.Length; i++)
        {
            var acid = acids.Acids[i];
            if (acid.DoubleBonds > 0)
            {
                var factor = free
                    ? IodineFactor.OfSubstance((double)acid.MolarMass, acid.DoubleBonds)
                    : IodineFactor.OfTriglyceride((double)acid.MolarMass, acid.DoubleBonds);
                terms.Add($"{Written.Number(100 * acids.Shares[i])} × {Written.Number(factor)}");
            }
        }

        return $"({string.Join(" + ", terms)}){unsaponifiable}";
    }

    private static IEnumerable<UsedFigure> Profiles(string name, Material material)
    {
        foreach (var share in material.Acids?.Stored.Shares ?? [])
        {
            yield return StoredFigures.Cite(name, share);
        }

        foreach (var share in material.Alcohols?.Stored.Shares ?? [])
        {
            yield return StoredFigures.Cite(name, share);
        }

        if (material.UnsaponifiableFigure is { } unsaponifiable)
        {
            yield return StoredFigures.Cite(name, unsaponifiable);
        }
    }
}
