using Materia.Catalogue;

namespace Materia.Formulation.Normalising;

/// <summary>Checks what a formula says beside its lines and its batch.</summary>
internal static class HeadRules
{
    private const decimal GreatestOverrun = 300;

    public static void Check(Formula formula, Release release, FaultList faults)
    {
        faults.Short("/title", formula.Title);
        for (var i = 0; i < formula.Lines.Count; i++)
        {
            faults.Short($"/lines/{i}/name", formula.Lines[i].Name);
        }

        if (formula.Use is { } use && release.FindUse(use) is null)
        {
            faults.Add("/use", $"\"{Fault.Shorten(use)}\" is not a known use. The uses are {Fault.Words(release.Content.Uses.Select(u => u.Id))}.");
        }

        if (formula.Whip is not { } whip)
        {
            return;
        }

        if (whip.OverrunPercent is null)
        {
            faults.Add("/whip/overrunPercent", "Give the overrun, 0 to 300: how many percent the volume grows by whipping.");
        }

        faults.Within("/whip/overrunPercent", whip.OverrunPercent, 0, GreatestOverrun, "Overrun [%]");
    }
}
