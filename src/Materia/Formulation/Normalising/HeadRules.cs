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

        CheckPh(formula.Ph, faults);
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

    private static void CheckPh(MeasuredPh? ph, FaultList faults)
    {
        if (ph is null)
        {
            return;
        }

        if (ph is { Value: null, Low: null, High: null })
        {
            faults.Add("/ph/value", "Give the measured pH, such as \"ph\": { \"value\": 5 }, or the range it is held in as low and high; leave ph out where it was not measured.");
        }
        else if (ph is { Value: not null } and ({ Low: not null } or { High: not null }))
        {
            faults.Add("/ph/value", "Give the pH as a value, or as low and high, not both.");
        }
        else if (ph is { Value: null } and ({ Low: null } or { High: null }))
        {
            faults.Add(ph.Low is null ? "/ph/low" : "/ph/high", "A range of pH has two ends; give low and high, or one value.");
        }

        faults.Within("/ph/value", ph.Value, 0, 14, "The pH");
        faults.Within("/ph/low", ph.Low, 0, 14, "The pH");
        faults.Within("/ph/high", ph.High, 0, 14, "The pH");
        if (ph.Low > ph.High)
        {
            faults.Add("/ph/low", "The lower end of the pH is above the upper end. Exchange them.");
        }
    }
}
