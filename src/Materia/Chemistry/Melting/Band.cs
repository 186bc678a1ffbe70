namespace Materia.Chemistry.Melting;

/// <summary>
/// The two edges of the band: every triacylglycerol class melts a little lower with less mixing, or a little higher with
/// more. The shifts are those whose effect on cocoa butter at 30 °C (about ±10 points on the steep stretch) the model's
/// authors give as the honest doubt about an untested fat; a floor stands in for the doubt on flat stretches.
/// </summary>
public static class Band
{
    private const double Temperature = 0.7;
    private const double Weight = 0.05;

    /// <summary>Least half-width where there is anything between nothing and all solid [points].</summary>
    private const double Floor = 3;

    /// <summary>The parameters of the softer edge of <paramref name="model"/>.</summary>
    public static Func<CrystalClass, ClassParameters> Soft(MeltingModel model) => Shifted(model, -1);

    /// <summary>The parameters of the firmer edge of <paramref name="model"/>.</summary>
    public static Func<CrystalClass, ClassParameters> Firm(MeltingModel model) => Shifted(model, 1);

    /// <summary>The band about <paramref name="percent"/> from the edges' solid contents, widened by the floor where it is solid in part.</summary>
    public static (double Low, double High) About(double percent, double soft, double firm)
    {
        // The floor fades out towards 0 and 100 %, where there is nothing left to be wrong about.
        var floor = Math.Min(Floor, Math.Min(percent, 100 - percent) / 2);
        return (Math.Clamp(Math.Min(soft, percent - floor), 0, 100), Math.Clamp(Math.Max(firm, percent + floor), 0, 100));
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
