using System.Globalization;
using Materia.Chemistry.Heating;

namespace Materia.Formulation.Making;

/// <summary>Chilling, whipping and filling of what is whipped.</summary>
internal static class WhipSteps
{
    public static void Add(Bench bench, Pots pots)
    {
        var window = Window(bench);
        pots.Whipping = window;
        if (window is null)
        {
            bench.Warnings.Add("It has too little solid fat, or none that is known, to hold air even in the cold: whipping will not last. More butter, or 3 to 5 % of a fatty alcohol or wax, would give it a body.");
        }

        Chill(bench, pots, window);
        Whip(bench, window);
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Fill,
            Action = "Spoon or pipe it into the jars at once, tap each jar on a cloth to settle the large holes, smooth the top and close. Keep what is left on the whisk as your test sample.",
            WatchFor = "It keeps its peaks in the jar; if it slumps, chill it for ten minutes and whip again.",
            Temperature = window is null ? null : PlanFigures.Celsius(window.ChillTo, window.From, window.To),
            Duration = PlanFigures.Usual(10, 5, 20),
        });
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Set,
            Action = "Leave the closed jars in the coolest place of the house for a night, so that the crystals finish growing and hold the air. Label with name, date and lot numbers.",
            WatchFor = window is null ? "Oil that parts at the bottom." : $"Soft and even the next day. Above about {Words.Celsius(window.To)} it loses its air: say so on the label in summer.",
            Duration = PlanFigures.Usual(720, 480, 1440),
        });
    }

    private static void Chill(Bench bench, Pots pots, WhippingPlan? window)
    {
        var to = window?.ChillTo ?? bench.Making.Chill + 5;
        var from = pots.Now;
        if (to > from - 1)
        {
            return;
        }

        var cold = to > bench.Room + 1;
        var minutes = bench.Minutes(Surroundings.StillAir, from, to, cold ? bench.Room : bench.Making.Chill);
        var duration = PlanFigures.Cooling(minutes);
        if (duration is null)
        {
            bench.Warnings.Add($"Your cold place at {Words.Celsius(bench.Making.Chill)} is not cold enough to bring it to {Words.Celsius(to)}; use a freezer for short spells, stirring between.");
        }

        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Chill,
            Action = cold
                ? $"Cover the bowl and leave it on the bench until the middle is at {Words.Celsius(to)}; no fridge is needed. Stir and scrape down the wall every ten minutes."
                : $"Cover the bowl and put it into the fridge at {Words.Celsius(bench.Making.Chill)} until the middle is at {Words.Celsius(to)}. Every ten minutes scrape the set rim into the middle and stir, or the wall is hard while the core still runs.",
            WatchFor = "Opaque, like soft butter: a finger leaves a dent that stays. Hard to the spoon means too far: let it stand on the bench for a while.",
            Temperature = PlanFigures.Celsius(to, window?.From ?? to, window?.To ?? to),
            Duration = duration,
        });
        pots.Now = to;
    }

    private static void Whip(Bench bench, WhippingPlan? window)
    {
        var overrun = (double)(bench.Input.Formula.OverrunPercent ?? 0);
        var time = window?.OnTheBench is { } stays ? Math.Min(15, Math.Max(5, stays.High)) : 15;
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Whip,
            Action = string.Create(CultureInfo.InvariantCulture, $"Weigh a small cup full, level. Whip on low until it is smooth, then on high for one to two minutes at a time, scraping down between, until the same cup weighs {100 / (1 + (overrun / 100)):0} g for every 100 g before: that is the {overrun:0.#} % of air asked for."),
            WatchFor = window is null
                ? "Soft peaks. If it turns glossy and runs, it is too warm."
                : $"Paler, with soft peaks that stand. Glossy and slack means it is above {Words.Celsius(window.To)}: back into the cold for ten minutes. Crumbly means it is below {Words.Celsius(window.From)}: wait.",
            Temperature = window is null ? null : PlanFigures.Celsius(window.ChillTo, window.From, window.To),
            Duration = PlanFigures.Usual(Math.Min(8, time), Math.Min(4, time), time),
        });
    }

    private static WhippingPlan? Window(Bench bench)
    {
        bench.Figures.AddRange(WhippingRange.All);
        if (bench.Heat.TemperatureAt(WhippingRange.Least.Value) is not { } warm || !bench.Heat.HasCurve || warm <= bench.Making.Chill)
        {
            return null;
        }

        var cool = bench.Heat.TemperatureAt(WhippingRange.Most.Value) ?? bench.Making.Chill;
        var aim = Math.Clamp(bench.Heat.TemperatureAt(WhippingRange.Aim.Value) ?? cool, Math.Max(cool, Math.Min(warm, bench.Making.Chill + 1)), warm);
        var holds = bench.Room >= cool && bench.Room <= warm;
        var end = bench.Room > warm ? warm : cool;
        var stays = holds ? null : PlanFigures.Cooling(bench.Minutes(Surroundings.StirredInAir, aim, end, bench.Room));
        return new WhippingPlan
        {
            From = Math.Round(cool, 1),
            To = Math.Round(warm, 1),
            ChillTo = Math.Round(aim, 1),
            OnTheBench = stays,
            Note = holds ? $"Your room at {Words.Celsius(bench.Room)} lies in the window: it can be whipped without hurry, though the whisk warms it by a few degrees."
                : bench.Room > warm ? "On the bench it warms out of the window; whip soon, and in a cooled bowl."
                : "Your room is colder than the window: it stiffens as it stands, so whip as soon as it is ready.",
        };
    }
}
