namespace Materia.Chemistry.Melting;

/// <summary>Reads figures off a curve and the two edges of its band.</summary>
internal sealed class CurveReading(SolidContentCurve central, SolidContentCurve soft, SolidContentCurve firm, double coverage)
{
    /// <summary>Least half-width of a temperature's band [K]: most printed slip points and melting ranges of the accuracy table lie within it.</summary>
    private const double LeastHalfBand = 2;

    /// <summary>The temperature at which <paramref name="level"/> of a curve is left [Cel].</summary>
    public ComputedFigure Temperature(Func<SolidContentCurve, double> level)
    {
        var at = level(central);
        var value = central.TemperatureAt(at);
        return value is null
            ? Absent(Catalogue.Units.Celsius, "There is not that much solid at −10 °C.")
            : Figure(
                value.Value,
                Math.Min(soft.TemperatureAt(at) ?? SolidContentCurve.From, value.Value - LeastHalfBand),
                Math.Max(firm.TemperatureAt(at) ?? value.Value, value.Value + LeastHalfBand),
                Catalogue.Units.Celsius);
    }

    /// <summary>The share of the solid at one temperature that melts by another [%].</summary>
    public ComputedFigure MeltedBetween(int from, int to)
    {
        if (central.At(from) < 1)
        {
            return Absent(Catalogue.Units.Percent, $"It is liquid at {from} °C.");
        }

        double Melted(SolidContentCurve c) => c.At(from) > 0 ? 100 * (1 - (c.At(to) / c.At(from))) : 100;
        return Figure(Melted(central), Melted(firm), Melted(soft), Catalogue.Units.Percent);
    }

    /// <summary>The heat of melting from <paramref name="from"/> on, with full crystallinity [J/g of fat phase].</summary>
    public ComputedFigure LatentHeat(int from)
    {
        // The enthalpies of fusion are known to about 10 %: bulk wax and fat values spread by that much.
        var value = central.Equilibrium.LatentHeatAt(from);
        return Figure(value, 0.9 * soft.Equilibrium.LatentHeatAt(from), 1.1 * firm.Equilibrium.LatentHeatAt(from), Catalogue.Units.JoulePerGram);
    }

    private ComputedFigure Figure(double value, double low, double high, string unit) => new()
    {
        Value = value,
        Low = Math.Min(Math.Min(low, high), value),
        High = Math.Max(Math.Max(low, high), value),
        Unit = unit,
        Method = MeltingSum.Method,
        Coverage = coverage,
    };

    private ComputedFigure Absent(string unit, string why) => new() { Unit = unit, Method = MeltingSum.Method, Coverage = coverage, Absent = why };
}
