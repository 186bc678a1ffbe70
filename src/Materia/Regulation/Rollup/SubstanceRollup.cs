using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Rollup;

/// <summary>
/// The substances of a formula that rules name, added up over all materials; each set of members once, however many limits and
/// allergens ask for it, and not before one does.
/// </summary>
internal sealed class SubstanceRollup
{
    private readonly RegulatedFormula formula;
    private readonly MemberSets sets;
    private readonly List<LineMatch>?[] found;
    private readonly SubstanceAmount?[] amounts;
    private readonly decimal[] fractions;
    private readonly OpenLines anything;
    private readonly OpenLines fragrance;

    /// <summary>Finds what each material holds of what rules name.</summary>
    public SubstanceRollup(RegulatedFormula formula)
    {
        this.formula = formula;
        sets = MemberSets.Of(formula.Release);
        found = new List<LineMatch>?[sets.Sets.Count];
        amounts = new SubstanceAmount?[sets.Sets.Count];
        fractions = [.. formula.Lines.Select(l => l.Percent / 100)];
        anything = new OpenLines(formula, fractions, content => content.IsMixtureOfUnknownParts ? 100 : 0);
        fragrance = new OpenLines(formula, fractions, content => content.IsMixtureOfUnknownParts ? 100 : content.Unaccounted);
        for (var i = 0; i < fractions.Length; i++)
        {
            if (fractions[i] == 0)
            {
                continue;
            }

            foreach (var match in sets.Matches(formula.Lines[i].Ingredient))
            {
                (found[match.Set] ??= []).Add(new LineMatch(i, match));
            }
        }
    }

    /// <summary>The limits that name something in the formula, in the order of the table.</summary>
    public IEnumerable<Limit> Limits => Named(formula.Release.Content.Limits, sets.OfLimits);

    /// <summary>The allergens that name something in the formula, in the order of the table.</summary>
    public IEnumerable<Allergen> Allergens => Named(formula.Release.Content.Allergens, sets.OfAllergens);

    /// <summary>The amount that counts towards a limit of the formula's release.</summary>
    public SubstanceAmount Of(Limit limit) => Of(sets.Of(limit));

    /// <summary>The amount of an allergen of the formula's release.</summary>
    public SubstanceAmount Of(Allergen allergen) => Of(sets.Of(allergen));

    private IEnumerable<T> Named<T>(IReadOnlyList<T> rules, int[] ordinals)
    {
        for (var i = 0; i < ordinals.Length; i++)
        {
            if (found[ordinals[i]] is not null)
            {
                yield return rules[i];
            }
        }
    }

    private SubstanceAmount Of(int set) => amounts[set] ??= Sum(sets.Sets[set], found[set] ?? []);

    private SubstanceAmount Sum(MemberSet set, List<LineMatch> matches)
    {
        var sum = Amount.None;
        decimal notExcluded = 0;
        var unstated = new List<string>();
        var contributions = new List<ExactContribution>(matches.Count);
        foreach (var (i, match) in matches)
        {
            var line = formula.Lines[i];
            var amount = match.Share * fractions[i];
            sum += amount;
            contributions.Add(new ExactContribution(line, match.Share, amount));
            if (match.Open > 0)
            {
                notExcluded += fractions[i] * match.Open;
                unstated.Add(line.Name);
            }
        }

        notExcluded += (set.MayBeUnstated ? fragrance : anything).Besides(matches, set, unstated);
        contributions.Sort(static (a, b) => b.Amount.High.CompareTo(a.Amount.High));
        return new SubstanceAmount(sum, contributions, notExcluded, unstated);
    }
}
