
namespace Materia.Formulation.Making;

/// <summary>Steps for a formula without water in which something has to be melted.</summary>
internal static class MeltRoute
{
    public static string Add(Bench bench, Pots pots)
    {
        var whipped = bench.Input.Formula.OverrunPercent > 0;
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Prepare,
            Action = "Wipe bowl, spatula and jars with alcohol and let them dry wholly: no drop of water may get in. Weigh everything. Cut hard butters into walnut-sized pieces and grate wax, or the outside is overheated before the middle melts.",
            WatchFor = "Everything dry, everything weighed and within reach before the heat goes on.",
            Duration = PlanFigures.Usual(15, 10, 25),
        });
        var target = HeatTarget.Of(bench);
        MeltSteps.Add(bench, pots, target);
        CoolSteps.Add(bench, pots, whipped);
        if (whipped)
        {
            WhipSteps.Add(bench, pots);
            return "whipped: melted, cooled, chilled and whipped";
        }

        SetSteps.Add(bench, pots);
        return bench.StiffensAt > bench.Room ? "poured: melted, poured and left to set" : "melted: melted, cooled and filled as a liquid";
    }
}
