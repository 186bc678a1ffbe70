namespace Materia.Chemistry.Melting;

/// <summary>
/// The band of a curve, from two independent doubts, which combine as the root of the sum of their squares.
/// <para>The model: every class melts a little lower with less mixing, or a little higher with more. The shifts are those whose effect
/// on cocoa butter at 30 °C (about ±10 points on the steep stretch) the science note measured as the honest doubt about an untested
/// fat. The floor on flat stretches was set on the comparison rows of the accuracy table (refinery curves whose samples' composition
/// is known by class only): ±5 points, the note's figure, held 61 % of them, ±8 hold 70 %.</para>
/// <para>The composition: every ingredient at the soft or at the firm end of what its stored ranges allow; see <see cref="AcidSpread"/>.</para>
/// </summary>
public static class Band
{
    private const double Temperature = 0.7;
    private const double Weight = 0.05;

    /// <summary>Least half-width where anything is solid [points].</summary>
    private const double Floor = 8;

    /// <summary>Where the firmer edge holds less solid than this there is nothing left to be wrong about [%].</summary>
    private const double Clear = 0.05;

    /// <summary>The parameters of the softer edge of <paramref name="model"/>.</summary>
    public static Func<CrystalClass, ClassParameters> Soft(MeltingModel model) => Shifted(model, -1);

    /// <summary>The parameters of the firmer edge of <paramref name="model"/>.</summary>
    public static Func<CrystalClass, ClassParameters> Firm(MeltingModel model) => Shifted(model, 1);

    /// <summary>The band of a curve at one temperature; the model's part is no narrower than the floor while a firm edge is not clear.</summary>
    public static (double Low, double High) At(CurveSet curves, int celsius)
    {
        var percent = curves.Usual.At(celsius);
        double firm = curves.Firm.At(celsius), firmest = curves.Firmest.At(celsius);
        var floor = Math.Max(firm, firmest) > Clear ? Floor : 0;
        var (low, high) = Independent(
            percent, (Math.Min(curves.Soft.At(celsius), percent - floor), Math.Max(firm, percent + floor)), (curves.Softest.At(celsius), firmest));
        return (Math.Clamp(low, 0, 100), Math.Clamp(high, 0, 100));
    }

    /// <summary>The range about a value that two independent ranges about it come to together; their ends may stand in either order.</summary>
    public static (double Low, double High) Independent(double value, (double One, double Other) first, (double One, double Other) second)
    {
        static double Below(double value, (double One, double Other) range) => Math.Max(0, value - Math.Min(range.One, range.Other));
        static double Above(double value, (double One, double Other) range) => Math.Max(0, Math.Max(range.One, range.Other) - value);
        return (value - double.Hypot(Below(value, first), Below(value, second)), value + double.Hypot(Above(value, first), Above(value, second)));
    }

    private static Func<CrystalClass, ClassParameters> Shifted(MeltingModel model, int direction)
    {
        var central = ClassTable.In(model);
        return c => Shift(central(c), direction);
    }

    // No crystal mixes better than an ideal one, nor worse than not at all.
    private static ClassParameters Shift(ClassParameters central, int direction) => central with
    {
        TemperatureShift = central.TemperatureShift + (direction * Temperature),
        MixingWeight = central.MixingWeight > 0 ? Math.Clamp(central.MixingWeight + (direction * Weight), 0, 1) : 0,
    };
}
