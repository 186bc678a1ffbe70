using Materia.Catalogue;
using Materia.Chemistry.Heating;

namespace Materia.Formulation.Making;

/// <summary>How hot to heat: past the last solid of what is melted, no hotter than the most delicate of what is heated bears.</summary>
/// <param name="Temperature">The temperature [Cel].</param>
/// <param name="Cap">The most that what is heated bears [Cel].</param>
/// <param name="CappedBy">What sets the cap.</param>
/// <param name="Why">Why so hot.</param>
/// <param name="Together">True where solids must melt together with oil, in which they dissolve lower.</param>
internal sealed record HeatTarget(double Temperature, double Cap, string CappedBy, string Why, bool Together)
{
    /// <summary>Past the last crystal, so that cold spots and slow wax clear too [K] (common practice).</summary>
    private const double Margin = 5;

    /// <summary>What a water bath is not driven past [Cel] (common practice).</summary>
    private const double BathLimit = 90;

    /// <summary>Both phases of an emulsion are brought to this, so that the emulsifier melts and spreads [Cel] (common practice).</summary>
    private const double EmulsionHeat = 70;

    /// <summary>Taken where no melting figure is known [Cel] (common practice).</summary>
    private const double UsualMelt = 70;

    public static HeatTarget Of(Bench bench)
    {
        var melted = bench.Of(ProcessPhase.Melt);
        var heated = bench.IsWatery ? [.. melted, .. bench.Of(ProcessPhase.Water)] : melted;
        var (cap, cappedBy) = (BathLimit, "the usual limit of a water bath");
        foreach (var line in heated)
        {
            if (line.Traits.Bears is { } bears && bears < cap)
            {
                (cap, cappedBy) = (bears, line.Name);
            }
        }

        var last = melted.Where(l => l.Traits.MeltedFrom is not null).MaxBy(l => l.Traits.MeltedFrom);
        var clear = bench.Melting.ClearPoint;
        var floor = bench.IsWatery ? EmulsionHeat : 0;
        var usual = melted.Any(l => l.Traits.MeltingUnknown) || last is null ? UsualMelt : 0;
        var wanted = Fives(Math.Max(Math.Max(floor, usual), last?.Traits.MeltedFrom + Margin ?? clear?.High + Margin ?? UsualMelt));
        if (wanted <= cap)
        {
            var why = last is null || usual + floor > 0 && last.Traits.MeltedFrom + Margin < Math.Max(floor, usual)
                ? bench.IsWatery ? "Hot enough for the emulsifier to melt and for the two phases to meet without solidifying." : "Hot enough for usual fats and waxes; no melting figure is held for all of them."
                : $"{last.Name} is the last to melt, at {Words.Celsius(last.Traits.MeltedFrom!.Value)}; {Margin:0} °C more clears cold spots.";
            return new(wanted, cap, cappedBy, why, false);
        }

        var dissolved = clear?.High is { } high && bench.Heat.HasCurve ? Math.Min(cap, Fives(high + Margin)) : cap;
        if (clear?.Value > cap)
        {
            bench.Warnings.Add($"It clears only at {Words.Celsius(clear.Value!.Value)}, above the {Words.Celsius(cap)} that {cappedBy} bears: melt the hard materials by themselves first and add it to the cooler melt.");
        }

        return new(dissolved, cap, cappedBy, $"By itself {last?.Name ?? "the melt"} would need {Words.Celsius(wanted)}, and {cappedBy} sets the limit at {Words.Celsius(cap)}; dissolved in the oils it clears sooner.", true);
    }

    private static double Fives(double temperature) => 5 * Math.Ceiling((temperature - 0.5) / 5);

    /// <summary>Heating as the plan reports it, and its time [min].</summary>
    public (HeatingPlan Plan, PlanFigure Duration) Heating(Bench bench)
    {
        var making = bench.Making;
        var power = making.Power ?? Surroundings.PlatePower.Value;
        bench.Figures.AddRange([Surroundings.PlateEfficiency, Surroundings.BathWater]);
        if (making.Power is null)
        {
            bench.Figures.Add(Surroundings.PlatePower);
            bench.Assumed.Add("No heaterPower was given; a plate at 500 W is taken.");
        }

        var rise = Math.Max(0, Temperature - bench.Room);
        var batch = bench.Mass * bench.Heat.Between(bench.Room, Temperature);
        var rest = (bench.Filled.WallCapacity + (Surroundings.BathWater.Value * bench.Mass * SpecificHeats.Water.Value)) * rise;
        var heat = Math.Max(0, batch + rest) / 1000;
        var minutes = heat * 1000 / (Surroundings.PlateEfficiency.Value * power) / 60;
        var plan = new HeatingPlan
        {
            Temperature = Temperature,
            Why = Why,
            Cap = Cap,
            CappedBy = CappedBy,
            Heat = new PlanFigure(Math.Round(heat, 1), Math.Round(0.85 * heat, 1), Math.Round(1.15 * heat, 1), "kJ"),
            Power = power,
        };
        return (plan, PlanFigures.Time(Math.Max(5, minutes), 0.7, 2) ?? PlanFigures.Usual(60, 30, 240));
    }
}
