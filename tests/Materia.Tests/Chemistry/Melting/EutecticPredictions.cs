using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>Where mixtures melt lowest: the least temperature, over all compositions, at which a tenth of a percent is solid.</summary>
internal static class EutecticPredictions
{
    private const double LastSolid = 0.1;

    private static readonly string[] Names = ["capric", "lauric", "myristic", "palmitic", "stearic"];

    private static readonly Lazy<IReadOnlyList<(string[] Acids, double Celsius)>> Ternaries = new(() =>
    [
        .. from a in Enumerable.Range(0, 5)
           from b in Enumerable.Range(a + 1, 4 - a)
           from c in Enumerable.Range(b + 1, Math.Max(0, 4 - b))
           let acids = new[] { Names[a], Names[b], Names[c] }
           select (acids, Lowest(acids).Celsius),
    ]);

    /// <summary>The figure for a row on a eutectic; <see langword="null"/> for other rows and for diagrams given in words.</summary>
    public static double? Find(MeltingRow row) => row switch
    {
        { System: "LaLaLa + MMM" } => LauricPair(),
        { System: "cocoa butter + coconut oil" } => SoftestCoconutShare(),
        { Id: "L011" } => LargestSofteningPalmShare(),
        { System: "ten ternaries of C10-C18 acids", Quantity: "lowest ideal eutectic T" } => Ternaries.Value.Min(t => t.Celsius),
        { System: "ten ternaries of C10-C18 acids" } => Ternaries.Value.Max(t => t.Celsius),
        { Quantity: "eutectic T" or "eutectic T measured" } when AcidsOf(row.System) is { } acids => Lowest(acids).Celsius,
        { Quantity: "eutectic dHfus" or "eutectic dHfus measured" } when AcidsOf(row.System) is { } acids => Heat(acids, Shares(row.System) ?? Lowest(acids).Shares),
        _ => null,
    };

    /// <summary>The composition [mass fraction] at which a mixture of free acids is last to crystallise, and the temperature at which it does [Cel].</summary>
    public static (double[] Shares, double Celsius) Lowest(IReadOnlyList<string> acids)
    {
        (double[] Shares, double Celsius) best = ([], double.PositiveInfinity);
        double[] centre = [.. acids.Select(_ => 1.0 / acids.Count)];
        foreach (var step in (double[])[0.05, 0.01, 0.0025])
        {
            var around = step == 0.05 ? null : centre;
            foreach (var shares in Grid(acids.Count, step, around))
            {
                var celsius = LiquidusOf(acids, shares);
                best = celsius < best.Celsius ? (shares, celsius) : best;
            }

            centre = best.Shares;
        }

        return best;
    }

    /// <summary>Where the last of a blend melts [Cel].</summary>
    public static double Liquidus(Blend blend) =>
        new SolidContentCurve(MeltingSpace.For(blend).Compose(blend).System(ClassTable.Of)).TemperatureAt(LastSolid)!.Value;

    private static double LiquidusOf(IReadOnlyList<string> acids, double[] shares) =>
        MeltingFats.Curve([.. acids.Select((a, i) => (Pure: Acid(a), Share: shares[i])).Where(p => p.Share > 0).Select(p => MeltingFats.Of(p.Pure, p.Share / p.Pure.MolarMass))]).TemperatureAt(LastSolid)!.Value;

    private static PureSpecies Acid(string name) => FreeChains.Acid(MeltingFats.Saturated(10 + (2 * Array.IndexOf(Names, name))), name + " acid");

    private static IEnumerable<double[]> Grid(int count, double step, double[]? around)
    {
        var (low, high) = (0, (int)Math.Round(1 / step));
        bool Near(int i, int at) => around is null || Math.Abs((at * step) - around[i]) <= 5.01 * step;
        for (var i = low; i <= high; i++)
        {
            if (!Near(0, i))
            {
                continue;
            }

            for (var j = count == 2 ? high - i : 0; j <= high - i; j++)
            {
                if (Near(1, j))
                {
                    yield return count == 2 ? [i * step, 1 - (i * step)] : [i * step, j * step, Math.Max(0, 1 - ((i + j) * step))];
                }
            }
        }
    }

    private static string[]? AcidsOf(string system)
    {
        var acids = Names.Where(n => system.Contains(n, StringComparison.Ordinal)).ToArray();
        return acids.Length is 2 or 3 ? acids : null;
    }

    /// <summary>The shares of <c>lauric/myristic 66.0/34.0 wt%</c>, in that order; the names are printed from the shortest chain on.</summary>
    private static double[]? Shares(string system) => system.EndsWith(" wt%", StringComparison.Ordinal)
        ? [.. system.Split(' ')[1].Split('/').Select(p => double.Parse(p, System.Globalization.CultureInfo.InvariantCulture) / 100)]
        : null;

    private static double Heat(string[] acids, double[] shares) =>
        acids.Select((a, i) => (Pure: Acid(a), Share: shares[i])).Sum(p => p.Share * 1000 * p.Pure.EnthalpyOfFusion / p.Pure.MolarMass);

    private static double LauricPair() => Enumerable.Range(1, 99).Select(i => i / 100.0).MinBy(x => MeltingFats.Curve(
        [MeltingFats.Of(PureSpecies.Of(TriacylglycerolName.Parse("LaLaLa")!.Value), x), MeltingFats.Of(PureSpecies.Of(TriacylglycerolName.Parse("MMM")!.Value), 1 - x)]).TemperatureAt(LastSolid)!.Value);

    private static double SoftestCoconutShare()
    {
        Ingredient cocoa = MeltingSystems.Find("cocoa butter CB-GH (Ghana)")!, coconut = MeltingSystems.Find("coconut oil")!;
        return Enumerable.Range(0, 21).Select(i => 5.0 * i).MinBy(p => BlendMelting.Of(TestFat.Blend((cocoa, 100 - p), (coconut, p))).SlipPoint!.Value!.Value);
    }

    private static double LargestSofteningPalmShare()
    {
        Ingredient palm = MeltingSystems.Find("palm oil PO-MY")!, kernel = MeltingSystems.Find("palm kernel oil PKO-MY")!;
        double At10(double share) => BlendMelting.Of(TestFat.Blend((palm, share), (kernel, 100 - share))).SolidContent.Single(p => p.Temperature == 10).Percent;
        var (all, none) = (At10(100), At10(0));
        return Enumerable.Range(1, 19).Select(i => 5.0 * i).MaxBy(p => (p / 100 * all) + ((1 - (p / 100)) * none) - At10(p));
    }
}
