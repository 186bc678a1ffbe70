using System.Globalization;
using Materia.Api.Evaluations;
using Materia.Api.Pages.Figures;
using Materia.Chemistry;
using Materia.Formulation.Batches;
using Materia.Formulation.Making;

namespace Materia.Api.Documents;

/// <summary>Figures in words for people, with the same digits as in the JSON.</summary>
internal static class Shown
{
    /// <summary>A number with four significant digits.</summary>
    public static string Number(double value) => SignificantDigits.Round(value).ToString("0.############", CultureInfo.InvariantCulture);

    /// <summary>An exact number, without noughts at its end.</summary>
    public static string Number(decimal value) => value.ToString("0.############", CultureInfo.InvariantCulture);

    /// <summary>The unit as people write it.</summary>
    public static string Unit(string ucum) => Written.Unit(ucum).TrimStart();

    /// <summary>A mass with its unit; weights keep the digits of the scale.</summary>
    public static string Mass(Mass mass) => $"{mass.Value.ToString(CultureInfo.InvariantCulture)} {Unit(mass.Unit)}";

    /// <summary>A computed figure with its range, or why there is none.</summary>
    public static string Figure(ComputedFigure? figure) => figure?.Value is not { } value
        ? figure?.Absent ?? "not known"
        : $"{Number(value)} {Unit(figure.Unit)}".TrimEnd() + (figure is { Low: { } low, High: { } high } && high > low ? $" ({Number(low)} to {Number(high)})" : "");

    /// <summary>A figure of a plan in whole numbers, which is what a kitchen can keep.</summary>
    public static string Plan(PlanFigure figure)
    {
        var unit = figure.Unit == "min" ? "min" : Unit(figure.Unit);
        var (value, low, high) = (Whole(figure.Value), Whole(figure.Low), Whole(figure.High));
        return low == high ? $"{value} {unit}" : $"{value} {unit} ({low} to {high})";
    }

    private static string Whole(double value) => Math.Round(value).ToString("0", CultureInfo.InvariantCulture);
}
