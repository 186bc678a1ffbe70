using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Preserving;

/// <summary>The criteria of low microbiological risk, as a laboratory's page gives them from ISO 29621.</summary>
internal static class LowRisk
{
    private const string Source = "iso-29621-laboratory-page";

    public static IReadOnlyList<LowRiskCriterion> Of(IReadOnlyList<FormulaPart> parts, FreeWater water, ComputedFigure activity, PhRange? ph)
    {
        var alcohol = Sum(parts, p => p.Part.Cas == "64-17-5" || p.Inci is "ALCOHOL" or "ALCOHOL DENAT.");
        var aluminium = Sum(parts, p => p.Inci == "ALUMINUM CHLOROHYDRATE");
        return
        [
            Criterion(
                $"free of water (below {Text(FreeWater.AnhydrousBelow)} %)", water.Anhydrous,
                $"{Text(water.Percent.Low)} to {Text(water.Percent.High)} % of water{(water.Unknown.Count > 0 ? $"; not known of {Written.List(water.Unknown)}" : string.Empty)}"),
            Criterion(
                "pH below 3 or above 10",
                ph is null ? null : ph.High < 3 || ph.Low > 10 ? true : ph.Low >= 3 && ph.High <= 10 ? false : null,
                ph is null ? "the formula gives no pH" : $"pH {Text(ph.Low)} to {Text(ph.High)}"),
            Criterion("ethanol above 20 %", Above(alcohol, 20), $"{Text(alcohol.Typical)} % of ethanol"),
            Criterion(
                "water activity below 0.75",
                activity.High is not { } high ? null : high <= WaterActivity.ClaimedUpTo ? true : high >= 0.75 + WaterActivityMargin ? false : null,
                activity.High is { } most ? $"at most {Written.Number(most)} by computation; nothing is claimed above 0.70" : activity.Absent ?? "not known"),
            Criterion("aluminium chlorohydrate above 25 %", Above(aluminium, 25), $"{Text(aluminium.Typical)} %"),
            Criterion("filled above 65 °C", null, "a formula does not say how it is filled; heat at filling does not help once the jar is open"),
        ];
    }

    // The estimate is an upper one, so that it excludes the criterion only where it lies well above and little else is dissolved.
    private const double WaterActivityMargin = 0.15;

    private static LowRiskCriterion Criterion(string text, bool? met, string found) => new(text, met, found, Source, Evidence.Secondary);

    private static bool? Above(ShareRange share, decimal bound) => share.Low > bound ? true : share.High <= bound ? false : null;

    private static ShareRange Sum(IReadOnlyList<FormulaPart> parts, Func<FormulaPart, bool> counts) =>
        parts.Where(counts).Aggregate(ShareRange.None, (sum, p) => sum + p.Share).Trimmed();

    private static string Text(decimal value) => value.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);
}
