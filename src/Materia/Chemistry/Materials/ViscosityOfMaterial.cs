using Materia.Catalogue;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Materials;

/// <summary>Where an ingredient's viscosity comes from.</summary>
internal enum ViscosityBasis
{
    /// <summary>Coefficients of that oil.</summary>
    Oil,

    /// <summary>The composition model.</summary>
    Composition,

    /// <summary>One measured viscosity, carried along the temperature.</summary>
    Measured,
}

/// <summary>The kinematic viscosity of one ingredient at the listed temperatures.</summary>
/// <param name="Basis">Where it comes from.</param>
/// <param name="Kinematic">Viscosities [mm2/s] in the order of <see cref="FlowTemperatures"/>; their range is that of the ingredient and its own figures, before the model's error.</param>
/// <param name="ModelError">The model's error as a share of ν.</param>
/// <param name="Stored">The stored figure, when measured.</param>
/// <param name="Note">What limits it; <see langword="null"/> when nothing does.</param>
internal sealed record Viscosity(ViscosityBasis Basis, Interval[] Kinematic, double ModelError, Figure? Stored, string? Note);

/// <summary>The viscosity of one ingredient: a maker's own, else the oil's own coefficients, else its composition, else a stored measurement, else unknown.</summary>
internal static class ViscosityOfMaterial
{
    /// <summary>The slope B of a liquid of which one viscosity is known: the middle of 2.7 to 3.5 found for oils; mineral oils lie at 3.4 to 3.7 (recalled).</summary>
    private const double UsualSlope = 3.1;

    private const double SlopeDoubt = 0.5;

    /// <summary>Lots of one ester or hydrocarbon differ by this share at least; an allowance of this library's own.</summary>
    private const double LotError = 0.05;

    /// <summary>Outside the fitted range of the composition the model is given this error.</summary>
    private const double OutsideError = 0.25;

    public static Viscosity? Of(Ingredient ingredient, bool fromCatalogue, AcidProfile? acids, AcidRange? range, bool waxEster, LinearDensity? density)
    {
        var stored = StoredFigures.Find(ingredient, Property.Viscosity);
        if (stored is { Source: StoredFigures.Own, At.Temperature: not null } && density is not null)
        {
            return Measured(stored, density);
        }

        var oil = fromCatalogue ? OilViscosity.Table.GetValueOrDefault(ingredient.Id) : null;
        if (acids is not null && !waxEster && ingredient.Kind is IngredientKind.Oil or IngredientKind.Butter && Composition(acids!, range, oil) is { } computed)
        {
            return computed;
        }

        if (oil is not null)
        {
            return new Viscosity(ViscosityBasis.Oil, [.. FlowTemperatures.All.Select(t => Interval.Exact(OfOil(oil, t)))], WaltherViscosity.Error, null, null);
        }

        return stored?.At?.Temperature is not null && density is not null ? Measured(stored, density) : null;
    }

    private static double OfOil(OilViscosity oil, double temperature) => WaltherViscosity.FromOrdinate(WaltherViscosity.OfOil(oil.A, oil.B, temperature));

    private static Viscosity? Composition(AcidProfile acids, AcidRange? range, OilViscosity? oil)
    {
        var hydroxyls = acids.MeanHydroxyls;
        var fitted = acids.MeanCarbons is >= 12.5 and <= 21.5 && acids.MeanDoubleBonds is >= 0.1 and <= 2.1;
        var near = acids.MeanCarbons is >= 12 and <= 22 && acids.MeanDoubleBonds <= 2.6;
        if (!near || acids.Conjugated > 1 || acids.Epoxy > 1 || hydroxyls is > 0.05 and < 0.8)
        {
            return null;
        }

        var values = new Interval[FlowTemperatures.All.Count];
        for (var i = 0; i < values.Length; i++)
        {
            var t = FlowTemperatures.All[i];
            var central = WaltherViscosity.FromOrdinate(
                WaltherViscosity.OfComposition(acids.MeanCarbons, acids.MeanDoubleBonds, hydroxyls > 0.05 ? hydroxyls : 0, t));
            var value = Interval.Exact(central);
            if (range?.BoundMean(a => WaltherViscosity.OfComposition(a.Carbons, a.DoubleBonds, a.Hydroxyls, t)) is var (thin, thick))
            {
                value = value.Reaching(WaltherViscosity.FromOrdinate(thin), WaltherViscosity.FromOrdinate(thick));
            }

            if (oil is not null && t >= oil.From && t <= oil.To)
            {
                // The oil's own coefficients give the level, its composition limits the relative spread.
                var own = OfOil(oil, t);
                value = new Interval(own, own * value.Low / central, own * value.High / central);
            }

            values[i] = value;
        }

        return new Viscosity(
            oil is null ? ViscosityBasis.Composition : ViscosityBasis.Oil,
            values,
            fitted ? WaltherViscosity.Error : OutsideError,
            null,
            fitted ? null : "its fatty acids lie a little outside the composition model's range, so its viscosity is given ±25 %");
    }

    private static Viscosity? Measured(Figure stored, LinearDensity density)
    {
        var reference = (double)stored.At!.Temperature!.Value;
        var dynamic = Interval.Of(stored);
        var rho = density.At(reference).Value;

        // Below 0.3 mm2/s the double logarithm does not exist; no oil is that thin.
        if (dynamic.Low / rho < 0.35)
        {
            return null;
        }

        var values = new Interval[FlowTemperatures.All.Count];
        for (var i = 0; i < values.Length; i++)
        {
            var shift = Math.Log10((FlowTemperatures.All[i] + 273.15) / (reference + 273.15));
            var flat = (UsualSlope - SlopeDoubt) * shift;
            var steep = (UsualSlope + SlopeDoubt) * shift;
            values[i] = new Interval(
                Shifted(dynamic.Value / rho, UsualSlope * shift),
                Shifted(dynamic.Low / rho, Math.Max(flat, steep)),
                Shifted(dynamic.High / rho, Math.Min(flat, steep)));
        }

        return new Viscosity(ViscosityBasis.Measured, values, LotError, stored, null);
    }

    private static double Shifted(double kinematic, double fall) => WaltherViscosity.FromOrdinate(WaltherViscosity.Ordinate(kinematic) - fall);
}
