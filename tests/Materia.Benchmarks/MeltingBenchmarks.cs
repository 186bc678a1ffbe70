using BenchmarkDotNet.Attributes;
using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Materia.Tests.Chemistry.Melting;

namespace Materia.Benchmarks;

/// <summary>
/// The melting of a formula of twelve lines with six fats and two structurants: the curve with its band (three curves of 91
/// temperatures and all that is read off them), against nested bisection at a single temperature.
/// </summary>
[MemoryDiagnoser]
public class MeltingBenchmarks
{
    private Blend blend = null!;
    private List<Species> species = null!;

    [GlobalSetup]
    public void Load()
    {
        var release = SeedCatalogue.Load();
        blend = Formulas.Normalise(Formulas.TwelveLines, release).Blend(release);
        var amounts = MeltingSpace.For(blend).Compose(blend);
        species = [.. amounts.Space.Species.Index().Where(s => amounts.Moles[s.Index] > 0).Select(s => Single(s.Item, amounts.Moles[s.Index]))];
    }

    [Benchmark(Baseline = true)]
    public double NestedBisectionAtOneTemperature() => NestedBisection.SolidContentAt(species, ClassTable.Of, 20);

    [Benchmark]
    public BlendMelting CurveWithBand() => BlendMelting.Of(blend);

    private static Species Single(PureSpecies pure, double moles) => new(
        double.IsNaN(pure.MeltingPoint) ? CrystalClass.Liquid : pure.Class,
        moles,
        pure.MolarMass,
        pure.MeltingPoint + ClassTable.Of(pure.Class).TemperatureShift + 273.15,
        1000 * pure.EnthalpyOfFusion);
}
