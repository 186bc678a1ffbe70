using System.Globalization;

namespace Materia.Chemistry.Melting;

/// <summary>Works out the melting of a blend: a curve with its band, and what is read off them.</summary>
internal static class MeltingSum
{
    public const string Method = "melting-class-solutions";
    private const double LeastCoverage = 0.8;
    private const double Annotated = 0.95;
    private const double Skin = 32;

    private static readonly int[] TextureTemperatures = [5, 20, 25, 30, 35, 40];

    public static BlendMelting Of(Blend blend)
    {
        var space = MeltingSpace.For(blend);
        var species = space.Compose(blend);
        var concerned = species.FatMass + species.UnknownMass;
        var coverage = species.Coverage;
        var powder = 100 * species.FillerMass;
        if (Refusal(species, concerned, coverage) is { } reason)
        {
            return new() { Method = Method, Coverage = coverage, Absent = reason, PowderPercent = powder };
        }

        var curves = CurveSet.Of(blend, species);
        var central = curves.Usual;
        var read = new CurveReading(curves, coverage);
        var warnings = Warnings(blend, species, coverage);
        return new()
        {
            SolidContent = Points(curves),
            MeltingStart = read.Temperature(c => 0.9 * c.At(10)),
            ClearPoint = read.Temperature(ClearLevel),
            SlipPoint = read.Temperature(_ => 4),
            MeltsOnSkin = read.MeltedBetween(20, (int)Skin),
            LatentHeat = read.LatentHeat(20),
            Texture = Textures(blend, species, central),
            LastToMelt = LastSpecies.Of(blend, species, central),
            Crystals = CrystalForms.Describe(central.Equilibrium.System),
            Graininess = GraininessRule.Of(species, central),
            PowderPercent = powder,
            Method = Method,
            Coverage = coverage,
            Warnings = warnings,
            Steps = blend.Explain ? MeltingSteps.Of(blend, species, central) : null,
        };
    }

    /// <summary>The solid content at which a blend counts as clear.</summary>
    public static double ClearLevel(SolidContentCurve curve) => Math.Min(1, curve.At(10) / 20);

    private static string? Refusal(BlendSpecies species, double concerned, double coverage)
    {
        if (concerned <= 0)
        {
            return "There is no fat phase in the formula.";
        }

        return coverage < LeastCoverage
            ? string.Create(CultureInfo.InvariantCulture, $"The melting of only {100 * coverage:0.#} % of the fat phase can be worked out, and {100 * LeastCoverage:0} % is needed. {string.Join("; ", species.Missing)}.")
            : null;
    }

    private static List<string> Warnings(Blend blend, BlendSpecies species, double coverage)
    {
        List<string> warnings = ["It is what a well-crystallised blend comes to after days at one temperature; quick cooling, tempering and storage are not part of it."];
        if (species.Missing.Count > 0)
        {
            warnings.Add(string.Create(CultureInfo.InvariantCulture, $"{(coverage < Annotated ? "Incomplete: " : "")}{string.Join("; ", species.Missing)}. The curve is that of the rest."));
        }

        warnings.AddRange(species.Warnings);
        var unspread = blend.Components.Where(c => c.MassFraction > 0 && species.Space.LacksSpread(c.Ingredient)).Select(c => c.Name).Distinct().ToList();
        if (unspread.Count > 0)
        {
            warnings.Add($"No range of composition is held for {Written.List(unspread)}: there the band is that of the model alone.");
        }

        if (blend.Components.Any(c => c.Ingredient.Id == "jojoba-oil" && c.MassFraction > 0))
        {
            warnings.Add("Jojoba counts as liquid; it turns solid near 7 to 10 °C.");
        }

        return warnings;
    }

    private static SolidContentPoint[] Points(CurveSet curves)
    {
        var points = new SolidContentPoint[SolidContentCurve.To - SolidContentCurve.From + 1];
        for (var i = 0; i < points.Length; i++)
        {
            var at = SolidContentCurve.From + i;
            var (low, high) = Band.At(curves, at);
            points[i] = new(at, curves.Usual.At(at), low, high);
        }

        return points;
    }

    private static TexturePoint[] Textures(Blend blend, BlendSpecies species, SolidContentCurve curve)
    {
        var gelling = WaxGel.GellingWaxes(blend, species.FatMass);
        var note = gelling.Count > 0 ? $"Firmer than the solid content alone says: {Written.List(gelling)} gels the oil." : null;
        return [.. TextureTemperatures.Select(t =>
        {
            // A wax gel holds while there is wax to hold it, which the clear point ends.
            var gelled = gelling.Count > 0 && curve.At(t) > ClearLevel(curve);
            return new TexturePoint(t, TextureWords.Of(curve.At(t), gelled), curve.At(t), gelled ? note : null);
        })];
    }
}
