using System.Collections.Frozen;
using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Preserving;

/// <summary>Estimates the water activity from the water and the humectants whose constants are known.</summary>
internal static class WaterActivity
{
    public const string Method = "water-activity-norrish";

    /// <summary>No safety is claimed from a computed water activity above this [1].</summary>
    public const double ClaimedUpTo = 0.70;

    private const double Error = 0.02;

    /// <summary>Constants of Norrish's equation by INCI name; recalled, to be looked up in his paper of 1966.</summary>
    private static readonly FrozenDictionary<string, (double MolarMass, double K)> Solutes = new Dictionary<string, (double, double)>(StringComparer.Ordinal)
    {
        ["GLYCERIN"] = (92.09, -1.16),
        ["SORBITOL"] = (182.17, -1.65),
        ["SUCROSE"] = (342.30, -6.47),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static ComputedFigure Of(IReadOnlyList<FormulaPart> parts, FreeWater water, bool explain)
    {
        var figure = new ComputedFigure { Unit = Units.One, Method = Method, Coverage = 0 };
        if (water.Anhydrous is not false)
        {
            return figure with { Absent = water.Anhydrous is true ? "There is no water in the formula." : "Nobody says how much water is in the formula." };
        }

        var counted = new List<(string Name, double Mass, double MolarMass, double K)>();
        foreach (var part in parts)
        {
            if (Solutes.TryGetValue(part.Inci, out var solute))
            {
                // What the material itself holds of water is counted as water.
                var dry = 1 - ((double)WaterOfMaterial.Of(part).Range.Typical / 100);
                counted.Add((part.Component, (double)part.Share.Typical * dry, solute.MolarMass, solute.K));
            }
        }

        var mass = (double)water.Percent.Typical;
        var value = NorrishWaterActivity.Of(mass, [.. counted.Select(c => (c.Mass, c.MolarMass, c.K))]);
        var soluble = parts.Where(p => !p.Part.IsWater && p.Kind is IngredientKind.Humectant or IngredientKind.Hydrosol or IngredientKind.Protein or IngredientKind.Surfactant or IngredientKind.PhAdjuster).Sum(p => (double)p.Share.Typical);
        var known = mass + counted.Sum(c => c.Mass);
        return figure with
        {
            Value = Math.Round(value, 4),
            High = Math.Min(1, Math.Round(value + Error, 4)),
            Coverage = Math.Round(Math.Min(1, known / Math.Max(known, mass + soluble)), 4),
            Warnings =
            [
                "Only water, glycerin, sorbitol and sucrose are counted; salts, other glycols, sugars and surfactants lower it further, so this is an upper estimate.",
                "A measurement decides. No safety is claimed from a computed value above 0.70.",
            ],
            Steps = explain ? [Step(mass, counted, value)] : null,
        };
    }

    private static ExplainedStep Step(double water, IReadOnlyList<(string Name, double Mass, double MolarMass, double K)> solutes, double value) => new()
    {
        What = "Water activity",
        Equation = "a = x_w exp(−(Σ √|K_i| x_i)²)",
        Arithmetic = $"water {Written.Number(water)} %{string.Concat(solutes.Select(s => $", {s.Name} {Written.Number(s.Mass)} % with K {Written.Number(s.K)}"))}: {Written.Number(value)}",
        Inputs = [.. solutes.Select(s => new UsedFigure(s.Name, "constant of Norrish's equation", s.K, Units.One, "memory", "recalled", null))],
    };
}
