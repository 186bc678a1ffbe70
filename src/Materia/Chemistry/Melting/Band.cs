namespace Materia.Chemistry.Melting;

/// <summary>
/// The two edges of the band: every class melts a little lower with less mixing, or a little higher with more. The shifts are those
/// whose effect on cocoa butter at 30 °C (about ±10 points on the steep stretch) the science note measured as the honest doubt about
/// an untested fat. The floor on flat stretches was set on the comparison rows of the accuracy table (refinery curves whose samples'
/// composition is known by class only): ±5 points, the note's figure, held 61 % of them, ±8 hold 70 %.
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

    /// <summary>The band about <paramref name="percent"/> from the edges' solid contents, no narrower than the floor while the firmer edge is not clear.</summary>
    public static (double Low, double High) About(double percent, double soft, double firm)
    {
        var floor = firm > Clear ? Floor : 0;
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
