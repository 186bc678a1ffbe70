using Materia.Chemistry;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>How far the solid contents of whole fats lie from print, by whose composition stands for the fat.</summary>
internal sealed record AccuracyFigures(string Group, IReadOnlyList<(MeltingRow Row, SolidContentPoint Computed)> Points)
{
    private static readonly Lazy<IReadOnlyList<(MeltingRow Row, SolidContentPoint Computed, Standing Standing)>> All = new(() =>
    [
        .. from row in MeltingFiles.Rows
           let point = FatPredictions.Solid(row)
           where point is not null
           select (row, point, MeltingSystems.StandingOf(row.System)!.Value),
    ]);

    /// <summary>Cocoa butters and palm kernel oil, on which the class parameters were set.</summary>
    public static AccuracyFigures Calibration { get; } = Of("calibration: cocoa butters GH, CI, MY and palm kernel oil", (r, _) => r.IsCalibration);

    /// <summary>What nothing was set on, with the composition of the same sample.</summary>
    public static AccuracyFigures Checks { get; } = Of("check: same sample's composition (palm oil)", (r, _) => r.IsCheck);

    /// <summary>Refinery curves of palm and palm kernel fats, with the composition of the class.</summary>
    public static AccuracyFigures Classes { get; } = Of("comparison: refinery curves, class composition", (r, s) => s == Standing.Class && r.Quantity == "SFC" && !r.IsCalibration && !r.IsCheck);

    /// <summary>Refinery curves of hydrogenated fats, with the saturated composition of the class of the feed.</summary>
    public static AccuracyFigures Hydrogenated { get; } = Of("comparison: hydrogenated fats, feed of class composition taken as saturated to the end", (_, s) => s == Standing.Hydrogenated);

    /// <summary>Curves of other samples beside the catalogue's fat of that name.</summary>
    public static AccuracyFigures Catalogue { get; } = Of("comparison: the catalogue's composition", (_, s) => s == Standing.Catalogue);

    /// <summary>The solid fat index, which is a change of volume and another quantity.</summary>
    public static AccuracyFigures Index { get; } = Of("comparison: solid fat index by dilatometry, another quantity", (r, _) => r.Quantity == "SFI");

    public static IReadOnlyList<AccuracyFigures> Groups => [Calibration, Checks, Classes, Hydrogenated, Catalogue, Index];

    /// <summary>All curves of solid fat content that nothing was set on.</summary>
    public static AccuracyFigures AllCurves { get; } = new("all of these but calibration and index", [.. Groups.Where(g => g != Index && g != Calibration).SelectMany(g => g.Points)]);

    public double MeanAbsoluteError => Points.Average(Error);

    public (MeltingRow Row, double Error) Worst => Points.Select(p => (p.Row, Error(p))).MaxBy(p => p.Item2);

    /// <summary>The share of printed values inside the band, 0 to 1.</summary>
    public double InsideBand => Points.Average(p => IsInside(p) ? 1.0 : 0);

    /// <summary>Mean width of the band [points].</summary>
    public double MeanWidth => Points.Average(p => p.Computed.High - p.Computed.Low);

    public static bool IsInside((MeltingRow Row, SolidContentPoint Computed) p) => p.Row.Printed!.Value.Low >= p.Computed.Low && p.Row.Printed.Value.Low <= p.Computed.High;

    public static double Error((MeltingRow Row, SolidContentPoint Computed) p) => Math.Abs(p.Computed.Percent - p.Row.Printed!.Value.Low);

    private static AccuracyFigures Of(string group, Func<MeltingRow, Standing, bool> which) =>
        new(group, [.. All.Value.Where(a => which(a.Row, a.Standing)).Select(a => (a.Row, a.Computed))]);
}
