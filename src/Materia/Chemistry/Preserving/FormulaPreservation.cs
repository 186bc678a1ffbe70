using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Preserving;

/// <summary>Works out how a formula stands to microbes.</summary>
public static class FormulaPreservation
{
    /// <summary>The key of the method.</summary>
    public const string Method = "preservation-check";

    /// <summary>Works it out.</summary>
    /// <param name="blend">The formula's materials.</param>
    /// <param name="ph">The measured pH of the product, where it is known.</param>
    /// <param name="use">What the product is for, where it is known.</param>
    /// <param name="listed">The market's entries of preservatives; empty where it has no such list.</param>
    public static Preservation Of(Blend blend, PhRange? ph, ProductUse? use, IReadOnlyList<Limit> listed)
    {
        ArgumentNullException.ThrowIfNull(blend);
        ArgumentNullException.ThrowIfNull(listed);
        var parts = FormulaPart.Of(blend);
        var water = FreeWater.Of(parts);
        var activity = WaterActivity.Of(parts, water, blend.Explain);
        var criteria = LowRisk.Of(parts, water, activity, ph);
        var met = criteria.Where(c => c.Met is true).ToList();
        var need = met.Count > 0 ? PreservationNeed.NotNeeded : water.Anhydrous is null ? PreservationNeed.Unknown : PreservationNeed.Needed;
        var oil = OilPhase.Of(parts, water);
        var found = PreservativesPresent.Of(parts, oil, ph, listed, blend.Explain, out var steps);
        return new Preservation
        {
            Water = water,
            WaterActivity = activity,
            Need = need,
            Why = Why(need, met, water),
            Criteria = criteria,
            Preservatives = found,
            Caveats = [.. Caveats(parts, found, oil)],
            Incompatibilities = ChargeConflicts.Of(parts),
            Missing = Missing(need, water, ph, found, listed),
            InUse = InUse(need, water, use),
            Antioxidants = AntioxidantsPresent.Of(parts),
            Method = Method,
            Steps = blend.Explain ? [WaterStep(water), .. steps] : null,
        };
    }

    private static string Why(PreservationNeed need, IReadOnlyList<LowRiskCriterion> met, FreeWater water) => need switch
    {
        PreservationNeed.NotNeeded => $"A criterion of low risk is met: {Written.List([.. met.Select(c => c.Criterion)])}.",
        PreservationNeed.Unknown => $"Whether microbes can grow hangs on the water in {Written.List(water.Unknown.Count > 0 ? water.Unknown : [.. water.Sources.Select(s => s.Ingredient).Distinct()])}, which is not known well enough.",
        _ => "It holds water, and no criterion of low risk is met: bacteria, yeasts and moulds can grow in it.",
    };

    private static IEnumerable<string> Caveats(IReadOnlyList<FormulaPart> parts, IReadOnlyList<PreservativeFinding> found, OilPhase? oil)
    {
        var unknown = found.Where(f => f.Partition is null).Select(f => f.Name).ToList();
        if (oil is not null && unknown.Count > 0)
        {
            yield return $"How much of {Written.List(unknown)} the oil takes up is not known: no constant measured in such an oil is held, and log P of octanol is no substitute.";
        }

        if (found.Count > 0 && parts.Any(p => p.Kind == IngredientKind.Emulsifier && p.Ingredient!.Charge?.Charge is null or IonicCharge.Nonionic))
        {
            yield return "Nonionic emulsifiers, ethoxylated ones above all, bind part of a preservative; the free share is smaller and is not computed.";
        }

        if (found.Count > 0 && parts.Any(p => p.Kind == IngredientKind.Clay))
        {
            yield return "Clays take up cationic and some other preservatives; a dose that serves without clay may fail with it.";
        }
    }

    private static List<string> Missing(PreservationNeed need, FreeWater water, PhRange? ph, IReadOnlyList<PreservativeFinding> found, IReadOnlyList<Limit> listed)
    {
        var missing = new List<string>();
        if (water.Anhydrous is null && water.Unknown.Count > 0)
        {
            missing.Add($"Ask the supplier how much water is in {Written.List(water.Unknown)}, and give it as water of an own material.");
        }

        if (need != PreservationNeed.NotNeeded && found.Count == 0)
        {
            missing.Add("No preservative is in it. Choose one that works at the product's pH and is allowed in the market, or make it without water.");
        }
        else if (need != PreservationNeed.NotNeeded && listed.Count > 0 && found.All(f => f.Listed is false))
        {
            missing.Add("Nothing in it is on the law's list of preservatives; what there is helps, and where it is meant to preserve only listed substances may be used.");
        }

        if (ph is null && found.Any(f => f.DissociationConstant is not null))
        {
            missing.Add("Measure the pH of the finished product and give it as ph: acids preserve only as far as they are undissociated.");
        }

        missing.AddRange(found.Where(f => f.FitsPh is false).Select(f => $"The pH lies outside the range in which {f.Name} works; set the pH, or choose another preservative."));
        if (need != PreservationNeed.NotNeeded)
        {
            missing.Add("A challenge test of the finished product in its jar is the proof; no figure here stands in for it.");
        }

        return missing;
    }

    private static string[] InUse(PreservationNeed need, FreeWater water, ProductUse? use)
    {
        if (water.Anhydrous is not true)
        {
            return need == PreservationNeed.Needed ? ["Fingers, bath water and air bring microbes into an open jar every day; a pump or a tube brings fewer than a jar."] : [];
        }

        var wet = use?.Exposure == Exposure.RinseOff
            ? "It is used with wet hands or under the shower: each dip brings in water and microbes, which grow in the drops. Fill it in a tube, use a dry spatula, make small jars, or add a preservative that dissolves in oil and have it tested."
            : "No preservative is needed while no water gets in. Wet fingers change that: the drops that they leave can grow moulds. Keep the lid shut and take it out with dry hands or a spatula.";
        return [wet, "Vitamin E and other antioxidants slow rancidity; they do not preserve against microbes."];
    }

    private static ExplainedStep WaterStep(FreeWater water) => new()
    {
        What = "Water in the formula",
        Equation = "water = Σ p_i w_i / 100, p_i the share of a material, w_i the water in it [%]",
        Arithmetic = $"{string.Join(" + ", water.Sources.Select(s => $"{s.Ingredient} {Written.Number((double)s.Percent.Typical)}"))} = {Written.Number((double)water.Percent.Typical)} %",
        Inputs = water.Cited,
    };
}
