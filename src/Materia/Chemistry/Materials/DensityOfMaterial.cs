using Materia.Catalogue;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Materials;

/// <summary>The density of one ingredient: its own measured one, else Lund's relation for melted triglycerides, else unknown.</summary>
internal static class DensityOfMaterial
{
    /// <summary>Solid fat is denser than its melt by this factor (recalled: a melting dilatation of about 0.08 mL/g, ±3 %).</summary>
    public const double SolidToLiquid = 1.09;

    private const double SolidError = 0.03;

    /// <summary>Slope of the triglycerides [g/mL]; measured slopes lie between 0.64e-3 and 0.70e-3.</summary>
    private const double Slope = LundDensity.Slope / 1000;

    private const double TriglycerideSlopeError = 0.04e-3;

    /// <summary>Other liquids are given the oils' slope and this much doubt: jojoba falls by 0.585e-3, light esters and terpenes by up to 0.85e-3.</summary>
    private const double OtherSlopeError = 0.2e-3;

    /// <summary>What a figure without a temperature was probably measured at [Cel], and how far that may be off.</summary>
    private const double Room = 20;

    private const double RoomDoubt = 5;

    public static LinearDensity? Of(Ingredient ingredient, AcidProfile? acids, bool waxEster, double? meltedFrom, Titration? iodine, Titration? saponification)
    {
        var triglyceride = ingredient.Kind is IngredientKind.Oil or IngredientKind.Butter && !waxEster;
        var stored = Choose(ingredient, meltedFrom, out var solid);

        // For the melt of a triglyceride the relation is the better guide than a figure of its solid or one without a temperature.
        if (stored is not null && !(triglyceride && acids is not null && (solid || (stored.At?.Temperature is null && stored.Source != StoredFigures.Own))))
        {
            return Measured(ingredient, stored, solid, triglyceride);
        }

        return triglyceride && acids is not null && iodine is not null && saponification is not null
            ? Lund(acids, WithoutModelError(iodine, IodineOfMaterial.ModelError), WithoutModelError(saponification, SaponificationOfMaterial.ModelError))
            : stored is null ? null : Measured(ingredient, stored, solid, triglyceride);
    }

    private static Figure? Choose(Ingredient ingredient, double? meltedFrom, out bool solid)
    {
        Figure? chosen = null;
        var best = int.MaxValue;
        solid = false;
        foreach (var figure in ingredient.Properties)
        {
            if (figure.Property is not (Property.Density or Property.RelativeDensity) || !StoredFigures.HasNumber(figure))
            {
                continue;
            }

            var isSolid = Kinds.IsLipid(ingredient.Kind) && meltedFrom > (double)(figure.At?.Temperature ?? (decimal)Room);
            var rank = (2 * StoredFigures.Rank(figure)) + (figure.Property == Property.Density ? 0 : 1) + (isSolid ? 1000 : 0)
                + (figure.At?.Temperature is null && Kinds.IsLipid(ingredient.Kind) ? 100 : 0);
            if (rank < best)
            {
                (chosen, best, solid) = (figure, rank, isSolid);
            }
        }

        return chosen;
    }

    private static LinearDensity Measured(Ingredient ingredient, Figure stored, bool solid, bool triglyceride)
    {
        var value = Interval.Of(stored);
        if (stored.Property == Property.RelativeDensity)
        {
            // Without the water's temperature 20 °C is meant as a rule; 4 °C, the other custom, is allowed for at the upper end.
            var water = WaterDensity.At((double)(stored.At?.WaterTemperature ?? 20)) / 1000;
            var densest = stored.At?.WaterTemperature is null ? WaterDensity.At(4) / 1000 : water;
            value = new Interval(value.Value * water, value.Low * water, value.High * densest);
        }

        if (Kinds.IsPowder(ingredient.Kind))
        {
            return new LinearDensity(value, Room, 0, 0, DensityBasis.Measured, stored);
        }

        if (stored.At?.Temperature is null)
        {
            value = value.Widened(RoomDoubt * Slope);
        }

        if (solid)
        {
            value = new Interval(value.Value / SolidToLiquid, value.Low / (SolidToLiquid + SolidError), value.High / (SolidToLiquid - SolidError));
        }

        return new LinearDensity(
            value,
            (double)(stored.At?.Temperature ?? (decimal)Room),
            Slope,
            triglyceride ? TriglycerideSlopeError : OtherSlopeError,
            solid ? DensityBasis.MeasuredSolid : DensityBasis.Measured,
            stored);
    }

    // Lund's error was measured on computed values, so their own model error is inside it and comes off the range here.
    private static Interval WithoutModelError(Titration titration, double modelError)
    {
        var value = titration.Value;
        return titration.Basis == TitrationBasis.Composition
            ? new Interval(value.Value, Math.Min(value.Value, value.Low + modelError), Math.Max(value.Value, value.High - modelError))
            : value;
    }

    private static LinearDensity Lund(AcidProfile acids, Interval iodine, Interval saponification)
    {
        const double reference = 15;
        var hydroxy = acids.HydroxyFraction;
        var value = LundDensity.Of(saponification.Value, iodine.Value, hydroxy, reference) / 1000;
        var low = LundDensity.Of(saponification.Low, iodine.Low, hydroxy, reference) / 1000;
        var high = LundDensity.Of(saponification.High, iodine.High, hydroxy, reference) / 1000;

        // Each end also carries the relation's own error.
        return new LinearDensity(
            new Interval(value, low * (1 - LundDensity.Error), high * (1 + LundDensity.Error)), reference, Slope, 0, DensityBasis.Lund, null);
    }
}
