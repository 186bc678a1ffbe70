using Materia.Catalogue;

namespace Materia.Chemistry;

/// <summary>Works out the oxidisability of a blend's fatty acids and what goes with it.</summary>
internal static class OxidationSum
{
    /// <summary>The key of the method of the index.</summary>
    public const string CoxMethod = "cox-value";

    /// <summary>The key of the method of the index for highly unsaturated acids.</summary>
    public const string PeroxidizabilityMethod = "peroxidizability-index";

    /// <summary>The key of the method of the storage rate.</summary>
    public const string RateMethod = "storage-rate-q10";

    private const int Digits = 3;

    private static readonly IReadOnlyList<string> Storage =
    [
        "No number of months can be given from a composition: carrying accelerated tests down to room temperature spans a factor of more than a hundred, and antioxidants, metals, peroxides and refining decide as much as the fatty acids.",
        "Date a batch by the earliest expiry date among its ingredients.",
        "Only a storage test of the product, smelled and measured for peroxides, shows how long it keeps.",
    ];

    public static BlendOxidation Of(Blend blend)
    {
        var cover = new Cover();
        double acidMass = 0;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            if (blend.Materials[i].BearsFattyAcids)
            {
                cover.Add(blend.Components[i], blend.Materials[i].Acids is not null);
                acidMass += blend.Components[i].MassFraction * blend.Materials[i].AcidMass;
            }
        }

        var rate = Rate(blend, cover.Share);
        if (cover.Refusal(CompositionSum.LeastCoverage, "fatty-acid profile", "fat-bearing mass") is { } refusal)
        {
            return new BlendOxidation
            {
                CoxValue = new ComputedFigure { Unit = Units.One, Method = CoxMethod, Coverage = cover.Share, Absent = refusal },
                RateAt30To20 = rate,
                Tocopherols = TocopherolSum.Of(blend),
                Storage = Storage,
            };
        }

        return Whole(blend, cover, acidMass) with { RateAt30To20 = rate, Tocopherols = TocopherolSum.Of(blend) };
    }

    private static BlendOxidation Whole(Blend blend, Cover cover, double acidMass)
    {
        var warnings = new List<string>();
        cover.Warn(warnings, "fatty-acid profile", "fat-bearing mass");
        double value = 0;
        double low = 0;
        double high = 0;
        double peroxidizability = 0;
        var highlyUnsaturated = false;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var weight = blend.Components[i].MassFraction * material.AcidMass / acidMass;
            if (!(weight > 0))
            {
                continue;
            }

            var cox = material.Shares!.Cox;
            value += weight * cox.Value;
            low += weight * cox.Low;
            high += weight * cox.High;
            peroxidizability += weight * material.Acids!.Peroxidizability;
            highlyUnsaturated |= material.Acids.HasFourDoubleBonds;
            if (material.Acids.Conjugated > 1)
            {
                warnings.Add($"{blend.Components[i].Name}: conjugated acids polymerise rather than turn rancid in the usual way; the index does not describe them.");
            }
        }

        var figure = new ComputedFigure
        {
            Value = Math.Round(value, Digits),
            Low = Math.Round(low, Digits),
            High = Math.Round(high, Digits),
            Unit = Units.One,
            Method = CoxMethod,
            Coverage = cover.Share,
            Warnings = warnings,
            Steps = blend.Explain ? OxidationSteps.Of(blend, acidMass, value) : null,
        };
        if (highlyUnsaturated)
        {
            warnings.Add("Acids with four or more double bonds count here as if they had three; see the index for highly unsaturated acids.");
        }

        return new BlendOxidation
        {
            CoxValue = figure,
            Band = BlendOxidation.Bands.Last(b => value >= b.From),
            Carriers = Carriers(blend, acidMass, value),
            PeroxidizabilityIndex = highlyUnsaturated ? figure with { Value = Math.Round(peroxidizability, Digits), Low = null, High = null, Method = PeroxidizabilityMethod, Steps = null, Warnings = [] } : null,
            RateAt30To20 = figure,
            Storage = Storage,
        };
    }

    private static List<OxidationCarrier> Carriers(Blend blend, double acidMass, double total)
    {
        var carriers = new List<OxidationCarrier>();
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            var weight = blend.Components[i].MassFraction * material.AcidMass / acidMass;
            if (weight > 0 && total > 0)
            {
                var own = material.Acids!.CoxValue;
                carriers.Add(new OxidationCarrier(blend.Components[i].Name, Math.Round(own, Digits), Math.Round(100 * weight * own / total, 1)));
            }
        }

        carriers.Sort((a, b) => a.PercentOfTotal != b.PercentOfTotal
            ? b.PercentOfTotal.CompareTo(a.PercentOfTotal)
            : string.CompareOrdinal(a.Ingredient, b.Ingredient));
        return carriers;
    }

    /// <summary>A property of oxidation itself, not of the blend: fatty esters oxidise two to three times faster with each ten kelvin.</summary>
    private static ComputedFigure Rate(Blend blend, double coverage) => new()
    {
        Value = 2.5,
        Low = 2,
        High = 3,
        Unit = Units.One,
        Method = RateMethod,
        Coverage = coverage,
        Steps = blend.Explain
            ? [new ExplainedStep { What = "Rate at 30 °C over that at 20 °C", Equation = "rate(T + 10)/rate(T) = Q10", Arithmetic = "Q10 = 2 to 3", Inputs = [new UsedFigure("fatty esters", "Q10 of oxidation", 2.5, Units.One, "secondary", "frankel-2005", null)] }]
            : null,
    };
}
