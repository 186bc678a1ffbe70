using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Limits;

/// <summary>
/// How a formula stands to every limit that names something in it. The greatest share that the compositions allow decides; sums and
/// comparisons are exact decimals. Nothing is called within a limit while a material could hold the substance unsaid.
/// </summary>
public static class LimitFindings
{
    /// <summary>The method's key.</summary>
    public const string Method = "substance-roll-up";

    // Nearer than this to the limit is worth a word.
    private const decimal NearShare = 0.8m;

    private static readonly IReadOnlyList<string> NoUse =
        ["The formula does not say what it is for, so the limits of every type of product are shown; give use, such as \"use\": \"body-lotion\"."];

    /// <summary>The findings: the exceeded ones first, then the unknown, near and within, each in the order of the table.</summary>
    public static IReadOnlyList<LimitFinding> Of(RegulatedFormula formula)
    {
        var index = LimitIndex.Of(formula.Release);
        var binding = index.Naming(formula).Where(l => Binds(l, formula)).ToList();
        return [.. binding.Where(l => l.RatioGroup is null).Select(l => Single(l, formula, index))
            .Concat(binding.Where(l => l.RatioGroup is not null).GroupBy(l => (l.RatioGroup, l.Authority)).Select(g => RatioFinding.Of([.. g], formula)))
            .OfType<LimitFinding>()
            .OrderBy(f => f.Status)];
    }

    internal static LimitStatus Verdict(decimal amount, decimal notExcluded, decimal limit, bool below) =>
        Over(amount, limit, below) ? LimitStatus.Exceeded
        : Over(amount + notExcluded, limit, below) ? LimitStatus.Unknown
        : amount + notExcluded > limit * NearShare ? LimitStatus.Near
        : LimitStatus.Within;

    internal static IReadOnlyList<string> Notes(RegulatedFormula formula) => formula.Use is null ? NoUse : [];

    private static bool Over(decimal amount, decimal limit, bool below) => below ? amount >= limit : amount > limit;

    private static bool Binds(Limit limit, RegulatedFormula formula) =>
        formula.Authorities.Contains(limit.Authority) && (formula.Use is not { } use || limit.Scope.Binds(use));

    private static LimitFinding? Single(Limit limit, RegulatedFormula formula, LimitIndex index)
    {
        var sum = SubstanceRollup.Of(formula, limit.Members, limit.ExceptIngredients, index.MayBeUnstated(limit));
        if (sum.Contributions.Count == 0)
        {
            return null;
        }

        var hasNumber = limit.MaxPercent is not null && limit.Kind != LimitKind.RawMaterial;
        var status = hasNumber ? Verdict(sum.Amount.High, sum.NotExcluded, limit.MaxPercent!.Value, limit.Below)
            : limit.Kind == LimitKind.Prohibited && sum.Amount.High > 0 ? LimitStatus.Exceeded
            : LimitStatus.Unknown;
        return Describe(limit, formula) with
        {
            Status = status,
            Amount = sum.Amount.Trimmed(),
            Limit = limit.MaxPercent,
            Warning = limit.WarningAbove is { } above && sum.Amount.High <= above ? null : limit.Warning,
            Contributions = [.. sum.Contributions.Select(c => c.Trimmed())],
            LargestPassing = hasNumber ? LargestPassing.Of(sum.Contributions, limit.MaxPercent!.Value, sum.NotExcluded, limit.Below) : [],
            NotExcluded = sum.NotExcluded > 0 ? Amount.Trim(sum.NotExcluded) : null,
            Unstated = sum.Unstated,
        };
    }

    internal static LimitFinding Describe(Limit limit, RegulatedFormula formula) => new()
    {
        Id = limit.Id,
        Substance = limit.Substance,
        Cas = limit.Members.Count == 1 ? limit.Members[0].Cas : null,
        Status = LimitStatus.Unknown,
        Amount = Amount.None,
        Unit = Units.Percent,
        ExpressedAs = limit.ExpressedAs,
        Authority = limit.Authority,
        Kind = limit.Kind,
        Instrument = limit.Source,
        Entry = limit.Locator,
        Evidence = limit.Evidence,
        Scope = limit.ScopeText,
        From = limit.From,
        Conditions = limit.Conditions,
        Contributions = [],
        Notes = [.. Notes(formula), .. DateNotes(limit, formula.AsOf)],
    };

    private static IEnumerable<string> DateNotes(Limit limit, DateOnly asOf)
    {
        if (limit.From is { } from && asOf < from)
        {
            yield return FormattableString.Invariant($"It binds new products from {from:yyyy-MM-dd} on, which is after {asOf:yyyy-MM-dd}.");
        }
    }
}
