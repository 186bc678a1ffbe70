using Materia.Catalogue;
using Materia.Chemistry.Heating;

namespace Materia.Formulation.Making;

/// <summary>Cooling, then powders, then what is volatile or delicate.</summary>
internal static class CoolSteps
{
    public static void Add(Bench bench, Pots pots, bool whipped)
    {
        var powders = bench.Lines.Where(l => l.Phase is ProcessPhase.Powder || (l.Phase == ProcessPhase.CoolDown && l.IsPowder)).ToList();
        var additions = bench.Lines.Where(l => (l.Phase == ProcessPhase.CoolDown && !l.IsPowder) || (l.Phase == ProcessPhase.Water && !bench.IsWatery)).ToList();
        var pours = Math.Min(pots.StillPours, pots.Now);
        var powderAt = Math.Min(pots.Now, Math.Max(pours, Math.Min(45, powders.Min(l => (double?)CoolDownLimit.Of(l, bench.Room).NotAbove) ?? 45)));
        var limits = additions.ToDictionary(l => l, l => CoolDownLimit.Of(l, bench.Room));
        var reachable = additions.Where(l => limits[l].NotAbove >= pours).ToList();
        var late = additions.Except(reachable).ToList();
        var best = reachable.Count == 0 ? pours : reachable.Min(l => limits[l].BestBelow);
        var additionAt = Math.Min(pots.Now, Math.Max(pours, best));
        var first = powders.Count > 0 ? powderAt : reachable.Count > 0 ? additionAt : Math.Min(pots.Now, pours + 3);
        Cool(bench, pots, first);
        Powder(bench, pots, powders, powderAt);
        if (reachable.Count > 0)
        {
            var at = Math.Min(pots.Now, additionAt);
            var forced = reachable.Where(l => at > limits[l].BestBelow).ToList();
            if (forced.Count > 0)
            {
                bench.Warnings.Add($"{Words.Upper(Words.Names(forced))} would best go in below {Words.Celsius(forced.Min(l => limits[l].BestBelow))}, but it stiffens at {Words.Celsius(bench.StiffensAt!.Value)}: it goes in at {Words.Celsius(at)}, just before pouring, and loses some of its top note or strength.");
            }

            bench.Add(new ProcessStep
            {
                Phase = MakingStage.CoolDown,
                Action = $"At {Words.Celsius(at)}{(forced.Count > 0 ? ", as cool as it still pours" : "")}, stir in {Words.Names(reachable)} for two minutes, away from flames{(forced.Count > 0 ? ", and go on to the next step without delay" : "")}.",
                WatchFor = "It stays smooth and still flows; drops that gather at the surface want more stirring.",
                Temperature = PlanFigures.Celsius(at, Math.Min(at, pours), Math.Max(at, Math.Floor(reachable.Min(l => limits[l].NotAbove)))),
                Duration = PlanFigures.Usual(3, 2, 5),
            }, reachable, l => limits[l]);
            pots.Now = at;
        }

        if (late.Count > 0)
        {
            Late(bench, pots, late, limits, whipped);
        }
    }

    private static void Cool(Bench bench, Pots pots, double to)
    {
        var from = pots.Now;
        var bath = Math.Min(15, bench.Room - 1);
        var onTheBench = PlanFigures.Cooling(bench.Minutes(Surroundings.StirredInAir, from, Math.Max(to, bench.Room + 2), bench.Room));
        var grainy = bench.Melting.Graininess?.Risk is "high" or "possible";
        pots.Cooling = new CoolingPlan
        {
            Biot = Math.Round(bench.Filled.Biot(Surroundings.StillAir.Value), 2),
            StiffensAt = bench.StiffensAt is { } stiff ? Math.Round(stiff, 1) : null,
            OnTheBench = onTheBench,
            InColdWater = PlanFigures.Cooling(bench.Minutes(Surroundings.WaterBath, from, Math.Max(to, bath + 2), bath)),
            Note = "The batch is taken as one lump, good to a factor of two. Above a Biot number of 0.1 the middle lags behind and the wall runs ahead: stir, and measure in the middle.",
        };
        if (to >= from - 2)
        {
            return;
        }

        to = Math.Max(to, Math.Min(from, bench.Room));
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Cool,
            Action = grainy
                ? $"Set the bowl in cold water and stir all the time, scraping the wall, until it has come down to {Words.Celsius(to)}. Fats like these grow sand-like crystals when they cool slowly."
                : $"Let it come down to {Words.Celsius(to)} on the bench, stirring and scraping the wall now and then; a bath of cold water is quicker.",
            WatchFor = bench.StiffensAt > bench.Room
                ? $"Still clear, or the first haze at the wall; it stiffens at about {Words.Celsius(bench.StiffensAt.Value)}."
                : "It stays liquid; measure in the middle.",
            Temperature = PlanFigures.Celsius(to, Math.Min(to, pots.StillPours), from),
            Duration = grainy ? pots.Cooling.InColdWater ?? onTheBench : onTheBench,
            Cautions = grainy && bench.Melting.Graininess is { } risk ? [new StepCaution($"It may turn grainy ({risk.Risk} risk): {risk.Reason}", Evidence.CommonPractice, "trade-practice", null, "meng-2013")] : [],
        });
        pots.Now = to;
    }

    private static void Powder(Bench bench, Pots pots, List<PlacedLine> powders, double wanted)
    {
        if (powders.Count == 0)
        {
            return;
        }

        var at = Math.Min(pots.Now, wanted);
        var sinking = Sinking.Of(bench, pots, powders, at);
        var viscosity = pots.Powders.Count > 0 ? $" It is then about {Math.Round(pots.Powders[0].Viscosity)} mPa·s thick, thin enough to wet every grain." : "";
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Powder,
            Action = $"At {Words.Celsius(at)}, rub {Words.Names(powders)} through a fine sieve onto the {(bench.IsWatery ? "cream" : "melt")} in three or four goes, stirring each one smooth before the next.{viscosity}",
            WatchFor = $"No dry lumps: draw the spatula up the wall and look for specks. {sinking}",
            Temperature = PlanFigures.Celsius(at, Math.Min(at, pots.StillPours), at),
            Duration = PlanFigures.Usual(10, 5, 15),
        }, powders, l => l.Phase == ProcessPhase.CoolDown ? CoolDownLimit.Of(l, bench.Room) : new CoolDownLimit(double.PositiveInfinity, double.PositiveInfinity));
        pots.Now = at;
    }

    private static void Late(Bench bench, Pots pots, List<PlacedLine> late, Dictionary<PlacedLine, CoolDownLimit> limits, bool whipped)
    {
        var most = late.Min(l => limits[l].NotAbove);
        var at = Math.Max(bench.Room, most - 2);
        bench.Warnings.Add($"It stiffens at {Words.Celsius(bench.StiffensAt ?? pots.Now)}, and {Words.Names(late)} may go in no hotter than {Words.Celsius(most)}: it has to be worked into the soft mass. {(whipped ? "" : "For a poured product take one with a higher flash point, or leave it out.")}".TrimEnd());
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.CoolDown,
            Action = $"Let it cool to {Words.Celsius(at)}, stirring, until it is a soft paste, and work in {Words.Names(late)} quickly, away from flames.",
            WatchFor = "An even paste without wet streaks; if it has gone hard, warm the bowl in your hands, not on the heat.",
            Temperature = PlanFigures.Celsius(at, Math.Min(at, bench.Room), most),
            Duration = PlanFigures.Cooling(bench.Minutes(Surroundings.StirredInAir, pots.Now, Math.Max(at, Math.Min(pots.Now, bench.Room + 2)), bench.Room)) ?? PlanFigures.Usual(30, 15, 90),
        }, late, l => limits[l]);
        pots.Now = Math.Min(pots.Now, at);
    }
}
