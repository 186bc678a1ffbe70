using Materia.Catalogue;

namespace Materia.Formulation.Making;

/// <summary>Steps for a formula without water in which everything is liquid at room temperature.</summary>
internal static class ColdRoute
{
    public static string Add(Bench bench)
    {
        var powders = bench.Lines.Where(l => l.IsPowder).ToList();
        var last = bench.Lines.Where(l => !l.IsPowder && l.Phase == ProcessPhase.CoolDown).ToList();
        var volatiles = last.Where(l => l.IsVolatile).ToList();
        var oils = bench.Lines.Except(powders).Except(volatiles).OrderByDescending(l => l.Line.Percent).ThenBy(l => l.Index).ToList();
        var room = PlanFigures.Celsius(bench.Room, bench.Room, bench.Room);
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Prepare,
            Action = $"No heating is needed: all of it is liquid at {Words.Celsius(bench.Room)}, and heat would only cost the oils some of their keeping. Wipe jug, stirrer and bottles with alcohol and let them dry wholly, since a drop of water is enough for mould. Weigh everything.",
            WatchFor = "Fresh oils: smell each one before it goes in, for one rancid oil spoils the blend.",
            Duration = PlanFigures.Usual(10, 5, 20),
        });
        if (oils.Count > 0)
        {
            bench.Add(new ProcessStep
            {
                Phase = MakingStage.Blend,
                Action = oils.Count == 1
                    ? $"Pour {Words.Names(oils)} into the jug."
                    : $"Pour {Words.Names(oils[..1])} into the jug and stir in {Words.Names(oils[1..])}, one after the other, slowly, so that no air is beaten in. A thick oil mixes sooner if some of the thin one rinses its beaker.",
                WatchFor = "One clear liquid without schlieren; a cloud that stays means that two of them do not mix.",
                Temperature = room,
                Duration = PlanFigures.Usual(5, 2, 10),
            }, oils);
        }

        if (powders.Count > 0)
        {
            bench.Add(new ProcessStep
            {
                Phase = MakingStage.Powder,
                Action = $"Sieve {Words.Names(powders)} into a small bowl, rub to a smooth paste with about as much of the oil, then stir the paste into the rest.",
                WatchFor = "No lumps at the wall. It will settle on standing, for nothing in the formula sets: write \"shake before use\" on the label.",
                Temperature = room,
                Duration = PlanFigures.Usual(10, 5, 20),
            }, powders);
            bench.Warnings.Add("Nothing in it sets, so the powder settles on standing. Shake before use, or add a little wax or a thickener for oil.");
        }

        if (volatiles.Count > 0)
        {
            bench.Add(new ProcessStep
            {
                Phase = MakingStage.CoolDown,
                Action = $"Last, stir in {Words.Names(volatiles)}, and cover at once.",
                WatchFor = "It stays clear. Judge the scent after a day, not from the jug.",
                Temperature = room,
                Duration = PlanFigures.Usual(3, 2, 5),
            }, volatiles, l => CoolDownLimit.Of(l, bench.Room));
        }

        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Fill,
            Action = "Fill into clean, dry, dark bottles up to the neck, for the air above an oil is what ages it. Close, and label with name, date and lot numbers. Keep it cool and dark.",
            WatchFor = "No drop of water on the glass, no cloud after a night in the cold; a cloud that clears in the hand is wax of the oil and does no harm.",
            Duration = PlanFigures.Usual(10, 5, 20),
        });
        return "cold: liquids are stirred together without heat";
    }
}
