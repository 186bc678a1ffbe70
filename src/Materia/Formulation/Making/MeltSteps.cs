using Materia.Catalogue;

namespace Materia.Formulation.Making;

/// <summary>The steps in which fats melt and oils join them.</summary>
internal static class MeltSteps
{
    /// <summary>Above the temperature at which it stiffens, so that a cold oil makes no crystals [K] (common practice).</summary>
    private const double Clearance = 5;

    public static void Add(Bench bench, Pots pots, HeatTarget target)
    {
        var solids = bench.Of(ProcessPhase.Melt);
        var oils = bench.Of(ProcessPhase.Oil);
        var heating = target.Heating(bench);
        pots.Heating = heating.Plan;
        var with = target.Together && oils.Count > 0 ? $" with about a third of {Words.Names(oils.Take(1))}, in which they dissolve sooner" : "";
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Melt,
            Action = solids.Count == 0
                ? $"Warm the vessel in a water bath to {Words.Celsius(target.Temperature)}."
                : $"Put {Words.Names(solids)}{with} into the {bench.Making.Vessel.Name} and set it in a water bath on low heat. Stir now and then, bring it to {Words.Celsius(target.Temperature)}, and hold it there for five minutes after the last piece has gone.",
            WatchFor = "A wholly clear melt: lift the spatula, and no threads, flakes or cloud run off it. What is left unmelted comes back later as grains.",
            Temperature = PlanFigures.Celsius(target.Temperature, Math.Max(bench.Room, target.Temperature - 5), target.Cap),
            Duration = heating.Duration,
        }, solids);
        pots.Now = target.Temperature;
        if (oils.Count == 0)
        {
            return;
        }

        var delicate = oils.Where(l => l.Traits.BestBelow is not null || l.Traits.Bears is not null).Select(l => Math.Min(l.Traits.BestBelow ?? 999, l.Traits.Bears ?? 999)).DefaultIfEmpty(999).Min();
        var stays = (bench.StiffensAt ?? bench.Room) + Clearance;
        var at = Math.Max(Math.Min(pots.Now, delicate), Math.Min(stays, pots.Now));
        var cooled = at < pots.Now - 1;
        if (at > delicate)
        {
            bench.Warnings.Add($"An oil is best added below {Words.Celsius(delicate)}, but the batch would solidify there; it goes in at {Words.Celsius(at)} and the bowl comes off the heat at once.");
        }

        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Oil,
            Action = $"Take the bowl off the bath{(cooled ? $", let it fall to about {Words.Celsius(at)}" : "")}, and stir in {Words.Names(oils)} in a thin stream. If cold oil makes threads or a skin, set the bowl back for a minute until it is clear again.",
            WatchFor = "Clear again after each pour, with no white threads on the spatula.",
            Temperature = PlanFigures.Celsius(at, Math.Min(at, stays), Math.Max(at, pots.Now)),
            Duration = PlanFigures.Usual(cooled ? 10 : 5, 3, cooled ? 25 : 10),
        }, oils);
        pots.Now = at;
    }
}
