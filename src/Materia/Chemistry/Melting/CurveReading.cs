using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>Reads figures off a curve and the curves of its band.</summary>
internal sealed class CurveReading(CurveSet curves, double coverage)
{
    /// <summary>Least half-width of a temperature's band [K]: most printed slip points and melting ranges of the accuracy table lie within it.</summary>
    private const double LeastHalfBand = 2;

    /// <summary>The enthalpies of fusion are known to about this much: bulk wax and fat values spread by it [1].</summary>
    private const double EnthalpyError = 0.1;

    /// <summary>The temperature at which <paramref name="level"/> of a curve is left [Cel].</summary>
    public ComputedFigure Temperature(Func<SolidContentCurve, double> level)
    {
        var at = level(curves.Usual);
        if (curves.Usual.TemperatureAt(at) is not { } value)
        {
            return Absent(Units.Celsius, "There is not that much solid at −10 °C.");
        }

        double On(SolidContentCurve curve) => ReferenceEquals(curve, curves.Usual) ? value : curve.TemperatureAt(at) ?? SolidContentCurve.From;
        return Figure(
            value,
            (Math.Min(On(curves.Soft), value - LeastHalfBand), Math.Max(On(curves.Firm), value + LeastHalfBand)),
            (On(curves.Softest), On(curves.Firmest)),
            Units.Celsius);
    }

    /// <summary>The share of the solid at one temperature that melts by another [%].</summary>
    public ComputedFigure MeltedBetween(int from, int to)
    {
        if (curves.Usual.At(from) < 1)
        {
            return Absent(Units.Percent, $"It is liquid at {from} °C.");
        }

        double Melted(SolidContentCurve c) => c.At(from) > 0 ? 100 * (1 - (c.At(to) / c.At(from))) : 100;
        var figure = Figure(Melted(curves.Usual), (Melted(curves.Firm), Melted(curves.Soft)), (Melted(curves.Firmest), Melted(curves.Softest)), Units.Percent);
        return figure with { Low = Math.Max(0, figure.Low!.Value), High = Math.Min(100, figure.High!.Value) };
    }

    /// <summary>The heat of melting from <paramref name="from"/> on, with full crystallinity [J/g of fat phase].</summary>
    public ComputedFigure LatentHeat(int from)
    {
        double At(SolidContentCurve curve) => curve.Equilibrium.LatentHeatAt(from);
        var figure = Figure(
            At(curves.Usual),
            ((1 - EnthalpyError) * At(curves.Soft), (1 + EnthalpyError) * At(curves.Firm)),
            (At(curves.Softest), At(curves.Firmest)),
            Units.JoulePerGram);
        return figure with { Low = Math.Max(0, figure.Low!.Value) };
    }

    private ComputedFigure Figure(double value, (double, double) model, (double, double) composition, string unit)
    {
        var (low, high) = Band.Independent(value, model, composition);
        return new() { Value = value, Low = low, High = high, Unit = unit, Method = MeltingSum.Method, Coverage = coverage };
    }

    private ComputedFigure Absent(string unit, string why) => new() { Unit = unit, Method = MeltingSum.Method, Coverage = coverage, Absent = why };
}
