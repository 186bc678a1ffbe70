using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Allergens;

/// <summary>Which fragrance allergens a label must name: group members are added first, and only a sum above the threshold counts.</summary>
public static class AllergenFindings
{
    /// <summary>The method's key.</summary>
    public const string Method = "allergen-declaration";

    /// <summary>
    /// The allergens that the known compositions hold, those to be declared first, then by how near they are to the threshold, under
    /// the law that comes first among the formula's authorities.
    /// </summary>
    public static IReadOnlyList<AllergenFinding> Of(RegulatedFormula formula)
    {
        var law = formula.Authorities.FirstOrDefault(a => a is Authority.Eu or Authority.Gb or Authority.Us, Authority.Eu);
        var exposure = formula.Use?.Exposure ?? Exposure.LeaveOn;
        var rule = AllergenRules.Describe(law, formula.Use);
        return [.. AllergenIndex.Of(formula.Release).Naming(formula)
            .Select(a => Finding(a, formula, exposure == Exposure.LeaveOn ? a.LeaveOnThreshold : a.RinseOffThreshold, law, rule))
            .OrderByDescending(f => f.Declared).ThenBy(f => f.TimesBelow ?? 0).ThenBy(f => f.DeclarationName, StringComparer.Ordinal)];
    }

    private static AllergenFinding Finding(Allergen allergen, RegulatedFormula formula, decimal threshold, Authority law, string rule)
    {
        var sum = SubstanceRollup.Of(formula, allergen.Members, [], mayBeUnstated: !allergen.NaturalExtract);
        var above = sum.Amount.High > threshold;
        var from = AllergenRules.From(allergen, law);
        var inForce = from is { } day && day <= formula.AsOf;
        return new AllergenFinding
        {
            Id = allergen.Id,
            DeclarationName = allergen.DeclarationName,
            Amount = sum.Amount.Trimmed(),
            Threshold = threshold,
            Declared = above && inForce,
            DeclaredFrom = above && !inForce ? from : null,
            TimesBelow = above || sum.Amount.High == 0 ? null : decimal.Round(threshold / sum.Amount.High, 2),
            NaturalExtract = allergen.NaturalExtract,
            Contributions = [.. sum.Contributions.Select(c => c.Trimmed())],
            NotExcludedIn = !above && sum.Amount.High + sum.NotExcluded > threshold ? sum.Unstated : [],
            Rule = rule,
            Instrument = allergen.Source,
            Entry = allergen.Locator,
            Evidence = allergen.Evidence,
        };
    }
}
