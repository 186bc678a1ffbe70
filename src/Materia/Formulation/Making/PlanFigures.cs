using Materia.Catalogue;
using Materia.Chemistry.Heating;

namespace Materia.Formulation.Making;

/// <summary>Makes the figures of a plan, rounded as far as they are worth.</summary>
internal static class PlanFigures
{
    /// <summary>Longer than this nobody waits for [min].</summary>
    private const double Endless = 60 * 24 * 30;

    /// <summary>A temperature in whole degrees.</summary>
    public static PlanFigure Celsius(double value, double low, double high) =>
        new(Math.Round(value), Math.Round(Math.Min(low, value)), Math.Round(Math.Max(high, value)), Units.Celsius);

    /// <summary>A usual time.</summary>
    public static PlanFigure Usual(double value, double low, double high) => new(value, low, high, "min");

    /// <summary>A computed time of cooling with its range; <see langword="null"/> when it never ends.</summary>
    public static PlanFigure? Cooling(double minutes) => Time(minutes, 1 / CoolingRun.Factor, CoolingRun.Factor);

    /// <summary>A computed time with its range; <see langword="null"/> when it never ends.</summary>
    public static PlanFigure? Time(double minutes, double low, double high) =>
        double.IsFinite(minutes) && minutes < Endless ? new(Rounded(minutes), Rounded(minutes * low), Rounded(minutes * high), "min") : null;

    private static double Rounded(double minutes) => minutes switch
    {
        <= 0 => 0,
        < 10 => Math.Max(1, Math.Round(minutes)),
        < 60 => 5 * Math.Round(minutes / 5),
        _ => 10 * Math.Round(minutes / 10),
    };
}
