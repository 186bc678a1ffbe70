using Materia.Chemistry.Heating;

namespace Materia.Formulation.Making;

/// <summary>Pouring and setting of what is not whipped.</summary>
internal static class SetSteps
{
    /// <summary>A jar where the formula names none [mL].</summary>
    private const double UsualJar = 50;

    /// <summary>Close enough to room temperature [K].</summary>
    private const double Near = 2;

    private static readonly Vessel Jar = new("jar", "jar", 0.8, 5, 0.84, 0.003);

    public static void Add(Bench bench, Pots pots)
    {
        var sets = bench.StiffensAt > bench.Room;
        var at = pots.Now;
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Fill,
            Action = sets
                ? $"Pour at {Words.Celsius(at)}, a few degrees before it thickens, in one go into dry jars or tins at room temperature. Poured much hotter it sinks in the middle; poured cooler it looks curdled. Keep a little back to fill hollows."
                : $"Fill at {Words.Celsius(at)} or cooler into dry, dark containers, and close.",
            WatchFor = sets ? "A level, shiny surface. If it thickens in the jug, warm the jug for a minute in the bath." : "Clear and even; it may cloud in the cold and clear again in the hand.",
            Temperature = PlanFigures.Celsius(at, Math.Min(at, pots.StillPours), at + 5),
            Duration = PlanFigures.Usual(10, 5, 20),
        });
        var volume = (double)(bench.Input.Formula.Batch?.JarVolume ?? (decimal)UsualJar);
        if (bench.Input.Formula.Batch?.JarVolume is null)
        {
            bench.Assumed.Add("No jar volume was given; the time to set is for jars of 50 mL.");
        }

        var filled = new FilledVessel(Jar, volume * 1e-6);
        var minutes = CoolingRun.Minutes(bench.Heat, volume * 0.92, filled, Surroundings.StillAir.Value, Math.Max(at, bench.Room + Near), bench.Room + Near, bench.Room);
        var grainy = bench.Melting.Graininess?.Risk is "high" or "possible";
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Set,
            Action = !sets ? "Close and label with name, date and lot numbers; keep it cool and dark."
                : grainy
                    ? $"Put the jars into the fridge at {Words.Celsius(bench.Making.Chill)} as soon as they are poured and leave them an hour, then on the bench overnight: quick cooling keeps the grains fine. Close only when they are cold, so that no water condenses under the lid. Label with name, date and lot numbers."
                    : "Leave the jars open under a cloth, without moving them, until they are cold through; then close, so that no water condenses under the lid. Label with name, date and lot numbers, and judge the hardness only the next day.",
            WatchFor = sets ? "Evenly dull and firm from the rim to the middle; no sand between the fingers after a week." : "It stays as it is after a night in the cold and a day in the warm.",
            Temperature = PlanFigures.Celsius(bench.Room, bench.Room, at),
            Duration = sets ? PlanFigures.Cooling(minutes) : PlanFigures.Usual(10, 5, 20),
        });
    }
}
