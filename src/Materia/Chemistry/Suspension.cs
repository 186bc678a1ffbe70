using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry;

/// <summary>The powders of a blend: their share of the volume and the share at which they would jam.</summary>
/// <param name="VolumeFraction">φ, 0 to 1.</param>
/// <param name="MaximumPacking">φm, 0 to 1.</param>
/// <param name="Assumed">The powders whose packing limit is the usual one, for want of an oil absorption.</param>
internal sealed record Suspension(double VolumeFraction, double MaximumPacking, IReadOnlyList<string> Assumed)
{
    /// <summary>How far the figure may be off, as a factor either way.</summary>
    private const double Factor = 1.5;

    /// <summary>The powders at a temperature [Cel]; <see langword="null"/> when there are none with a density.</summary>
    public static Suspension? Of(Blend blend, double temperature)
    {
        double volume = 0;
        double solids = 0;
        double packed = 0;
        List<string>? assumed = null;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var component = blend.Components[i];
            if (component.MassFraction <= 0 || material.Density is not { } density)
            {
                continue;
            }

            var rho = density.At(temperature).Value;
            var v = component.MassFraction / rho;
            volume += v;
            if (!material.IsPowder)
            {
                continue;
            }

            var packing = MaronPierce.UsualPacking;
            if (material.OilAbsorption is { } absorption)
            {
                packing = MaronPierce.PackingFromOilAbsorption((double)absorption.Central(), rho);
            }
            else
            {
                (assumed ??= []).Add(component.Name);
            }

            // Oil absorptions add up by mass, so the volumes that the powders fill when packed add up too.
            solids += v;
            packed += v / packing;
        }

        return solids > 0 ? new Suspension(solids / volume, solids / packed, assumed ?? []) : null;
    }

    /// <summary>True when no figure may be given.</summary>
    public bool IsTooFull => VolumeFraction > MaronPierce.Refusal * MaximumPacking;

    /// <summary>
    /// How many times the powders thicken the liquid. The lower end is never below that of dilute spheres, the upper end never above the
    /// square, so that a trace of powder carries little doubt.
    /// </summary>
    public Interval RelativeViscosity()
    {
        var value = MaronPierce.RelativeViscosity(VolumeFraction, MaximumPacking);
        return new Interval(value, Math.Min(value, Math.Max(MaronPierce.Dilute(VolumeFraction), value / Factor)), value * Math.Min(Factor, value));
    }
}
