using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>Where an ingredient's density comes from.</summary>
internal enum DensityBasis
{
    /// <summary>Measured on the liquid, or on a powder without its pores.</summary>
    Measured,

    /// <summary>Measured on the solid fat or wax and brought to the melt.</summary>
    MeasuredSolid,

    /// <summary>From the saponification and iodine value by Lund's relation.</summary>
    Lund,
}

/// <summary>The density of one ingredient, falling in a straight line with temperature [g/mL].</summary>
/// <param name="Reference">The density at <paramref name="Temperature"/>.</param>
/// <param name="Temperature">The reference temperature [Cel].</param>
/// <param name="Slope">Fall with each kelvin [g/mL].</param>
/// <param name="SlopeError">How far the slope may be off [g/mL].</param>
/// <param name="Basis">Where it comes from.</param>
/// <param name="Stored">The stored figure, where there is one.</param>
internal sealed record LinearDensity(Interval Reference, double Temperature, double Slope, double SlopeError, DensityBasis Basis, Figure? Stored)
{
    /// <summary>The density at a temperature [Cel].</summary>
    public Interval At(double temperature)
    {
        var step = temperature - Temperature;
        var doubt = SlopeError * Math.Abs(step);
        var fall = Slope * step;
        return new Interval(Reference.Value - fall, Reference.Low - fall - doubt, Reference.High - fall + doubt);
    }
}
