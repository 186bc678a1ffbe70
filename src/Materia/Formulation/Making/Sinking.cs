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
        var flow = bench.Input.Of(ChemistrySections.Flow);
        if (bench.IsWatery || flow.Viscosity.Count == 0)
        {
            return bench.IsWatery ? "A cream that stands holds it up." : "How fast it settles cannot be told, for the viscosity is not known: stir again just before filling.";
        }

        var liquid = Viscosity(flow, at) / (flow.Solids?.RelativeViscosity ?? 1);
        var stiff = bench.StiffensAt ?? double.NegativeInfinity;
        var cold = stiff > bench.Room + 1 ? bench.Room : bench.Making.Chill;
        var minutes = stiff >= at ? 0 : double.IsFinite(stiff) ? bench.Minutes(Surroundings.StillAir, at, stiff, cold) : double.PositiveInfinity;
        double worst = 0;
        foreach (var powder in powders)
        {
            if (powder.Line.Parts.Count != 1 || MaterialIndex.For(bench.Input.Release).Find(powder.Line.Parts[0].Ingredient).Density is not { } density)
            {
                continue;
            }

            var size = GrainSizes.Of(powder.Line.Parts[0].Ingredient);
            bench.Figures.Add(size);
            double Speed(double um) => StokesSettling.Velocity(um, density.At(at).Value, Around(bench, at), liquid);
            var distance = Speed(size.Value) * 60_000 * minutes;
            worst = double.IsFinite(distance) ? Math.Max(worst, distance) : double.PositiveInfinity;
            pots.Powders.Add(new PowderPlan
            {
                Ingredient = powder.Line.IsOwn ? null : powder.Line.Material,
                Own = powder.Line.IsOwn ? powder.Line.Material : null,
                Temperature = Math.Round(at),
                Viscosity = liquid,
                Velocity = Speed(size.Value) * 3_600_000,
                Sinks = double.IsFinite(distance) ? new PlanFigure(distance, Speed(size.Low) * 60_000 * minutes, Speed(size.High) * 60_000 * minutes, "mm") : null,
            });
        }

        return double.IsPositiveInfinity(worst) ? "Nothing in it sets, so the powder settles on standing: shake or stir before use."
            : worst < Visible ? "It sets before the powder can sink far."
            : System.FormattableString.Invariant($"Left alone, a grain would sink about {worst:0.#} mm before it sets in {Words.Minutes(minutes)}: stir until it thickens.");
    }

    /// <summary>Between listed temperatures the logarithm of the viscosity runs straight; below the coolest listed one it is at least that.</summary>
    private static double Viscosity(BlendFlow flow, double temperature)
    {
        var values = flow.Viscosity;
        var i = 0;
        while (i < values.Count - 1 && values[i + 1].Temperature < temperature)
        {
            i++;
        }

        if (temperature <= values[0].Temperature || i == values.Count - 1)
        {
            return temperature <= values[0].Temperature ? values[0].Value : values[^1].Value;
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
