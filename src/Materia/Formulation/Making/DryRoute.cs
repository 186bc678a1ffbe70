using Materia.Catalogue;

namespace Materia.Formulation.Making;

/// <summary>Steps for a formula of powders.</summary>
internal static class DryRoute
{
    public static string Add(Bench bench)
    {
        var liquids = bench.Lines.Where(l => !l.IsPowder).ToList();
        var powders = bench.Lines.Where(l => l.IsPowder).OrderBy(l => l.Line.Percent).ThenBy(l => l.Index).ToList();
        var steady = liquids.Where(l => l.Phase != ProcessPhase.CoolDown).ToList();
        var last = liquids.Where(l => l.Phase == ProcessPhase.CoolDown).ToList();
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Prepare,
            Action = "Nothing is heated. Wipe bowl, sieve and jars with alcohol and let them dry to the last drop: a damp bowl makes lumps and lets microbes in. Put on a dust mask, close the window, and weigh everything slowly and low over the bowl.",
            WatchFor = "Dry, clean tools, and powders that run freely; break up what has caked.",
            Duration = PlanFigures.Usual(15, 10, 25),
        });
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Powder,
            Action = powders.Count < 2
                ? "Sieve the powder into the bowl."
                : $"Begin with the smallest amount, {Words.Names(powders[..1])}, and rub it with as much of the next. Go on adding about as much as is already in the bowl, so that the small amounts spread evenly, until all is in; then put the whole through a fine sieve twice.",
            WatchFor = "One even colour: press a little flat with a spoon, and no streak or speck shows.",
            Duration = PlanFigures.Usual(15, 10, 30),
        }, powders);
        if (steady.Count > 0)
        {
            bench.Add(new ProcessStep
            {
                Phase = MakingStage.Blend,
                Action = $"Drip {Words.Names(steady)} onto a few spoons of the powder, rub between gloved hands or in a mortar until no drop is left, then mix that into the rest and sieve again.",
                WatchFor = "No wet crumbs; it may feel softer and dust less.",
                Temperature = PlanFigures.Celsius(bench.Room, bench.Room, bench.Room),
                Duration = PlanFigures.Usual(10, 5, 20),
            }, steady);
        }

        if (last.Count > 0)
        {
            bench.Add(new ProcessStep
            {
                Phase = MakingStage.CoolDown,
                Action = $"Drop {Words.Names(last)} onto a few spoons of the powder in a small lidded jar, shake, rub through the sieve, and mix into the rest. Close the bowl and leave it for an hour, so that the scent spreads.",
                WatchFor = "No damp spots; the scent is the same at the top and at the bottom.",
                Temperature = PlanFigures.Celsius(bench.Room, bench.Room, bench.Room),
                Duration = PlanFigures.Usual(70, 60, 120),
            }, last, l => CoolDownLimit.Of(l, bench.Room));
        }

        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Fill,
            Action = "Let the dust settle, fill through a funnel, tap down and close tightly. Write name, date and lot numbers on the jar. What is mixed with water for use is for the same day.",
            WatchFor = "It runs out evenly; caking after a few days says that something was damp.",
            Duration = PlanFigures.Usual(10, 5, 20),
        });
        return "dry: powders are mixed without heat";
    }
}
