using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Preserving;

/// <summary>Finds the preservatives of a formula and what its pH and oil leave of them.</summary>
internal static class PreservativesPresent
{
    // Where the pH is not known, the range of skin and hair products is shown.
    private static readonly decimal[] UsualPh = [4.0m, 4.5m, 5.0m, 5.5m, 6.0m];

    // A substance whose pKa is above this is undissociated in any product for skin or hair.
    private const decimal WeakestThatMatters = 8;

    // Under a tenth, ten times the dose would be needed for the same effect.
    private const double LittleLeft = 10;

    public static IReadOnlyList<PreservativeFinding> Of(
        IReadOnlyList<FormulaPart> parts, OilPhase? oil, PhRange? ph, IReadOnlyList<Limit> listed, bool explain, out List<ExplainedStep> steps)
    {
        var members = listed.SelectMany(l => l.Members).ToList();
        steps = [];
        var found = new List<PreservativeFinding>();
        var named = parts.Where(p => p.Kind == IngredientKind.Preservative || members.Exists(m => Names(m, p))).Select(p => p.Component).ToHashSet(StringComparer.Ordinal);
        foreach (var group in parts.GroupBy(p => p.Inci.Length > 0 ? p.Inci : p.Part.Name, StringComparer.OrdinalIgnoreCase))
        {
            var part = group.First();
            var member = members.Find(m => Names(m, part));

            // A mixture sold as a preservative, none of whose parts is known as one, counts by its parts.
            if (member is null && part.Kind != IngredientKind.Preservative
                && !(part.Owner.Kind == IngredientKind.Preservative && !part.Part.IsWater && !named.Contains(part.Component)))
            {
                continue;
            }

            var share = group.Aggregate(ShareRange.None, (sum, p) => sum + p.Share).Trimmed();
            found.Add(Finding(part, [.. group.Select(p => p.Component).Distinct(StringComparer.Ordinal)], share, member, listed.Count > 0, ph, oil, explain ? steps : null));
        }

        return [.. found.OrderByDescending(f => f.Percent.High)];
    }

    private static bool Names(RegulatedMember member, FormulaPart part) =>
        (member.Cas is { } cas && cas == part.Part.Cas)
        || (member.InciName is { } inci && string.Equals(inci, part.Inci, StringComparison.OrdinalIgnoreCase))
        || (member.Ingredient is { } id && id == part.Ingredient?.Id);

    private static PreservativeFinding Finding(
        FormulaPart part, IReadOnlyList<string> components, ShareRange share, RegulatedMember? member, bool hasList, PhRange? ph, OilPhase? oil, List<ExplainedStep>? steps)
    {
        var effective = part.Ingredient is { } record ? StoredFigures.Find(record, Property.EffectivePh) : null;
        var constant = part.Ingredient is { } known ? StoredFigures.Find(known, Property.DissociationConstant) : null;
        var shares = constant is null ? [] : Undissociated(constant, share, member, ph);
        if (constant is not null && steps is not null)
        {
            steps.AddRange(shares.Select(s => new ExplainedStep
            {
                What = $"Undissociated share of {part.Part.Name} at pH {Written.Number((double)s.Ph)}",
                Equation = "f = 1/(1 + 10^(pH − pKa))",
                Arithmetic = $"1/(1 + 10^({Written.Number((double)s.Ph)} − {Written.Number((double)constant.Central())})) = {Written.Number(s.Percent)} %",
                Inputs = [StoredFigures.Cite(part.Component, constant)],
            }));
        }

        var strongest = shares.Count > 0 ? shares[^1].Percent / 100 : 1;
        return new PreservativeFinding
        {
            Name = part.Part.InciName ?? part.Part.Name,
            Ingredients = components,
            Percent = share,
            Listed = hasList ? member is not null : null,
            EffectiveFrom = effective?.Low,
            EffectiveTo = effective?.High,
            FitsPh = Fits(effective, ph),
            DissociationConstant = constant?.Central(),
            Undissociated = shares,
            Partition = oil?.PartitionOf(part, (double)share.Typical, strongest),
            Notes = constant is not null && constant.Central() < WeakestThatMatters && ph is not null && shares[^1].Percent < LittleLeft
                ? [$"At the upper end of the pH only {Written.Percent(shares[^1].Percent / 100)} of it is in the form that works."]
                : [],
        };
    }

    private static List<UndissociatedShare> Undissociated(Figure constant, ShareRange share, RegulatedMember? member, PhRange? ph)
    {
        IEnumerable<decimal> at = ph is null ? UsualPh : new[] { ph.Low, ph.Value, ph.High }.Distinct();
        return [.. at.Select(p =>
        {
            var fraction = UndissociatedFraction.Of((double)p, (double)constant.Central());
            return new UndissociatedShare(p, 100 * fraction, member is null ? null : (double)(share.Typical * member.Factor) * fraction);
        })];
    }

    private static bool? Fits(Figure? effective, PhRange? ph)
    {
        if (effective is null || ph is null || (effective.Low is null && effective.High is null))
        {
            return null;
        }

        var (low, high) = (effective.Low ?? 0, effective.High ?? 14);
        return ph.Low >= low && ph.High <= high ? true : ph.Low > high || ph.High < low ? false : null;
    }
}
