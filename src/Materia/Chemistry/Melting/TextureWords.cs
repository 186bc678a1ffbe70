namespace Materia.Chemistry.Melting;

/// <summary>
/// Plain words for a solid content. The bands are ours, to be tuned with samples: under 3 % pourable, to 10 % soft as an
/// ointment, to 22 % scoopable, to 40 % firm but spreadable when worked, to 60 % hard, above brittle. A wax network is
/// firm at far less solid, so a wax above the amount at which it gels an oil raises the word by one.
/// </summary>
public static class TextureWords
{
    private static readonly (double Below, string Words)[] Bands =
    [
        (3, "pourable"),
        (10, "soft, like an ointment"),
        (22, "scoopable"),
        (40, "firm, spreadable when worked"),
        (60, "hard"),
        (double.PositiveInfinity, "hard and brittle"),
    ];

    /// <summary>The words for <paramref name="percent"/> solid; <paramref name="gelled"/> raises them by one band.</summary>
    public static string Of(double percent, bool gelled)
    {
        var band = Array.FindIndex(Bands, b => percent < b.Below);
        return Bands[Math.Min(band + (gelled ? 1 : 0), Bands.Length - 1)].Words;
    }
}
