using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>Adds up the fatty acids of a blend: p = Σ w·f·p_i / Σ w·f, w the mass of a component and f its fatty acids by mass.</summary>
internal static class CompositionSum
{
    /// <summary>The share of the fat-bearing mass that must have a profile.</summary>
    public const double LeastCoverage = 0.5;

    public const string Method = "fatty-acids-by-mass";

    public static FattyAcidComposition Of(Blend blend)
    {
        var cover = new Cover();
        var warnings = new List<string>();
        double acidMass = 0;
        double alcoholMass = 0;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var component = blend.Components[i];
            if (material.BearsFattyAcids)
            {
                cover.Add(component, material.Acids is not null);
                acidMass += component.MassFraction * material.AcidMass;
            }

            alcoholMass += material.IsLipid ? component.MassFraction * material.AlcoholMass : 0;
            if (material.ProfileFault is { } fault)
            {
                warnings.Add($"{component.Name}: {fault}, so it is left out.");
            }
        }

        if (cover.Refusal(LeastCoverage, "fatty-acid profile", "fat-bearing mass") is { } refusal)
        {
            return new FattyAcidComposition { Method = Method, Coverage = cover.Share, Absent = refusal, Warnings = warnings };
        }

        cover.Warn(warnings, "fatty-acid profile", "fat-bearing mass");
        var sums = new AcidSums();
        sums.Add(blend, acidMass, alcoholMass);
        if (sums.Undifferentiated)
        {
            warnings.Add("Some analyses give an acid only as a total without position (such as 18:1) and others by position (such as 18:1n-9); compare the totals, not the rows.");
        }

        return new FattyAcidComposition
        {
            Acids = sums.AcidRows(),
            Totals = sums.ChainRows(),
            Classes = new SaturationClasses(Share(sums.Saturated), Share(sums.Monounsaturated), Share(sums.Polyunsaturated)),
            Alcohols = sums.AlcoholRows(),
            Method = Method,
            Coverage = cover.Share,
            Warnings = warnings,
            Steps = blend.Explain ? CompositionSteps.Of(blend, acidMass) : null,
        };
    }

    private static ClassShare Share(Interval sum) => new(Round(sum.Value), Round(sum.Low), Round(sum.High));

    private static double Round(double percent) => Math.Round(percent, AcidSums.Digits);
}
