using Materia.Catalogue;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Making;

/// <summary>Plans the making of a formula: chooses the way, then adds the steps.</summary>
internal static class ProcessPlanner
{
    /// <summary>Above so much powder and nothing melted it is a powder [%].</summary>
    private const decimal MostlyPowder = 70;

    /// <summary>A batch above this cools in no kitchen bowl as the model says [g].</summary>
    private const double LargeBatch = 5000;

    public static ProcessPlan Plan(EvaluationInput input)
    {
        var bench = new Bench(input);
        var melts = bench.Of(ProcessPhase.Melt);
        var dry = melts.Count == 0 && !bench.IsWatery && bench.Lines.Where(l => l.IsPowder).Sum(l => l.Line.Percent) >= MostlyPowder;
        if (bench.Mass > LargeBatch)
        {
            bench.Warnings.Add("Over 5 kg the times of heating and cooling are no guide: work in smaller vessels, or measure the first batch.");
        }

        var pots = new Pots(bench);
        var route = dry ? DryRoute.Add(bench)
            : bench.IsWatery ? WaterRoute.Add(bench, pots)
            : melts.Count > 0 ? MeltRoute.Add(bench, pots)
            : ColdRoute.Add(bench);
        return new ProcessPlan
        {
            Route = route,
            Steps = bench.Steps,
            BatchMass = bench.Mass,
            Heating = pots.Heating,
            Cooling = pots.Cooling,
            Whipping = pots.Whipping,
            Powders = pots.Powders,
            Graininess = pots.Heating is not null && !bench.IsWatery ? bench.Melting.Graininess : null,
            Assumed = bench.Assumed,
            Warnings = bench.Warnings,
            Figures = [.. bench.Figures.Distinct()],
        };
    }
}

/// <summary>What the steps of a plan find out on the way.</summary>
/// <param name="bench">The bench.</param>
internal sealed class Pots(Bench bench)
{
    /// <summary>The bench.</summary>
    public Bench Bench { get; } = bench;

    /// <summary>The temperature of the batch after the last step [Cel].</summary>
    public double Now { get; set; } = bench.Room;

    public HeatingPlan? Heating { get; set; }

    public CoolingPlan? Cooling { get; set; }

    public WhippingPlan? Whipping { get; set; }

    public List<PowderPlan> Powders { get; } = [];

    /// <summary>The coolest temperature at which it still stirs and pours [Cel].</summary>
    public double StillPours => Math.Max(Bench.Room, Math.Ceiling((Bench.StiffensAt ?? double.MinValue) + 2));
}
