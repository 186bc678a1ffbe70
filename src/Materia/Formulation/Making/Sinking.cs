using Materia.Chemistry;
using Materia.Chemistry.Heating;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Making;

/// <summary>How far powders sink from the moment they are stirred in until the batch no longer flows.</summary>
internal static class Sinking
{
    /// <summary>Sinking by so much shows as a layer at the bottom of a jar [mm]; ours.</summary>
    private const double Visible = 1;

    /// <summary>Works it out, and says what to do about it.</summary>
    public static string Of(Bench bench, Pots pots, IReadOnlyList<PlacedLine> powders, double at)
    {
        if (bench.IsWatery || bench.Input.Of(ChemistrySections.Flow).Viscosity.Count == 0)
        {
            return bench.IsWatery ? "A cream that stands holds it up." : "How fast it settles cannot be told, for the viscosity is not known: stir again just before filling.";
        }

        var minutes = UntilSet(bench, at);
        var plans = Plans(bench, powders, at, minutes);
        pots.Powders.AddRange(plans);
        var worst = plans.Count == 0 ? 0 : plans.Max(p => p.Sinks?.Value ?? double.PositiveInfinity);
        return double.IsPositiveInfinity(worst) ? "Nothing in it sets, so the powder settles on standing: shake or stir before use."
            : worst < Visible ? "It sets before the powder can sink far."
            : FormattableString.Invariant($"Left alone, a grain would sink about {worst:0.#} mm before it sets in {Words.Minutes(minutes)}: stir until it thickens.");
    }

    /// <summary>Whether a powder stirred in at this temperature would be seen to sink before the batch sets.</summary>
    public static bool Shows(Bench bench, IReadOnlyList<PlacedLine> powders, double at) =>
        !bench.IsWatery && bench.Input.Of(ChemistrySections.Flow).Viscosity.Count > 0
        && Plans(bench, powders, at, UntilSet(bench, at)).Exists(p => !(p.Sinks?.Value < Visible));

    private static double UntilSet(Bench bench, double at)
    {
        if (bench.StiffensAt is not { } stiff)
        {
            return double.PositiveInfinity;
        }

        var cold = stiff > bench.Room + 1 ? bench.Room : bench.Making.Chill;
        return stiff >= at ? 0 : bench.Minutes(Surroundings.StillAir, at, stiff, cold);
    }

    private static List<PowderPlan> Plans(Bench bench, IReadOnlyList<PlacedLine> powders, double at, double minutes)
    {
        var flow = bench.Input.Of(ChemistrySections.Flow);
        var liquid = Viscosity(flow, at) / (flow.Solids?.RelativeViscosity ?? 1);
        var around = Around(bench, at);
        var plans = new List<PowderPlan>();
        foreach (var powder in powders.Where(p => p.Line.Parts.Count == 1))
        {
            var ingredient = powder.Line.Parts[0].Ingredient;
            if (MaterialIndex.For(bench.Input.Release).Find(ingredient).Density is not { } density)
            {
                continue;
            }

            var size = GrainSizes.Of(ingredient);
            bench.Figures.Add(size);
            double Speed(double um) => StokesSettling.Velocity(um, density.At(at).Value, around, liquid);
            double Sinks(double um) => Math.Round(Math.Clamp(Speed(um) * 60_000 * minutes, 0, 1000 * bench.Filled.Depth), 2);
            plans.Add(new PowderPlan
            {
                Ingredient = powder.Line.IsOwn ? null : powder.Line.Material,
                Own = powder.Line.IsOwn ? powder.Line.Material : null,
                Temperature = Math.Round(at),
                Viscosity = Math.Round(liquid, 1),
                Velocity = Math.Round(Speed(size.Value) * 3_600_000, 3),
                Sinks = double.IsFinite(minutes) ? new PlanFigure(Sinks(size.Value), Sinks(size.Low), Sinks(size.High), "mm") : null,
            });
        }

        return plans;
    }

    /// <summary>The logarithm of the viscosity runs straight between listed temperatures, and on below the coolest one, where the curve still says liquid.</summary>
    private static double Viscosity(BlendFlow flow, double temperature)
    {
        var values = flow.Viscosity;
        if (values.Count == 1 || temperature >= values[^1].Temperature)
        {
            return values[^1].Value;
        }

        var i = 0;
        while (i < values.Count - 2 && values[i + 1].Temperature < temperature)
        {
            i++;
        }

        var part = (temperature - values[i].Temperature) / (values[i + 1].Temperature - values[i].Temperature);
        return Math.Exp(((1 - part) * Math.Log(values[i].Value)) + (part * Math.Log(values[i + 1].Value)));
    }

    /// <summary>Density of what is round the grains [g/mL].</summary>
    private static double Around(Bench bench, double temperature)
    {
        double mass = 0, volume = 0;
        var blend = bench.Input.Blend;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            if (!blend.Materials[i].IsPowder && blend.Materials[i].Density is { } density)
            {
                mass += blend.Components[i].MassFraction;
                volume += blend.Components[i].MassFraction / density.At(temperature).Value;
            }
        }

        return volume > 0 ? mass / volume : 0.92;
    }
}
