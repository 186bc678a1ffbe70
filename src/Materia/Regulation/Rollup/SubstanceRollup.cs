using System.Runtime.InteropServices;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Rollup;

/// <summary>
/// The substances of a formula that rules name, added up over all materials; each set of members once, however many limits and
/// allergens ask for it.
/// </summary>
internal sealed class SubstanceRollup
{
    private readonly RegulatedFormula formula;
    private readonly MemberSets sets;
    private readonly Dictionary<int, SubstanceAmount> amounts = [];
    private readonly List<int> open = [];

    /// <summary>Adds up.</summary>
    public SubstanceRollup(RegulatedFormula formula)
    {
        this.formula = formula;
        sets = MemberSets.Of(formula.Release);
        var found = new Dictionary<int, List<(int Line, SetMatch Match)>>();
        for (var i = 0; i < formula.Lines.Count; i++)
        {
            if (formula.Lines[i].Percent == 0)
            {
                continue;
            }

            if (Open(i) > 0)
            {
                open.Add(i);
            }

            foreach (var match in sets.Matches(formula.Lines[i].Ingredient))
            {
                (CollectionsMarshal.GetValueRefOrAddDefault(found, match.Set, out _) ??= []).Add((i, match));
            }
        }

        foreach (var (set, matches) in found)
        {
            amounts.Add(set, Sum(sets.Sets[set], matches));
        }
    }

    /// <summary>The limits that name something in the formula, in the order of the table.</summary>
    public IEnumerable<Limit> Limits => formula.Release.Content.Limits.Where(l => amounts.ContainsKey(sets.OfLimit[l]));

    /// <summary>The allergens that name something in the formula, in the order of the table.</summary>
    public IEnumerable<Allergen> Allergens => formula.Release.Content.Allergens.Where(a => amounts.ContainsKey(sets.OfAllergen[a]));

    /// <summary>The amount that counts towards a limit of the formula's release.</summary>
    public SubstanceAmount Of(Limit limit) => Of(sets.OfLimit[limit]);

    /// <summary>The amount of an allergen of the formula's release.</summary>
    public SubstanceAmount Of(Allergen allergen) => Of(sets.OfAllergen[allergen]);

    private SubstanceAmount Of(int set) => amounts.TryGetValue(set, out var amount) ? amount : Sum(sets.Sets[set], []);

    private SubstanceAmount Sum(MemberSet set, List<(int Line, SetMatch Match)> matches)
    {
        var sum = Amount.None;
        decimal notExcluded = 0;
        var unstated = new List<string>();
        var contributions = new List<Contribution>(matches.Count);
        foreach (var (i, match) in matches)
        {
            var line = formula.Lines[i];
            var amount = match.Share * (line.Percent / 100);
            sum += amount;
            contributions.Add(new Contribution(line.Name, line.Percent, match.Share, amount));
            if (match.Open > 0)
            {
                notExcluded += line.Percent * match.Open / 100;
                unstated.Add(line.Name);
            }
        }

        foreach (var i in open)
        {
            var line = formula.Lines[i];
            if ((set.MayBeUnstated || formula.Contents[i].IsMixtureOfUnknownParts)
                && !matches.Exists(m => m.Line == i) && !set.Except.Contains(line.Ingredient.Id, StringComparer.Ordinal))
            {
                notExcluded += line.Percent * Open(i) / 100;
                unstated.Add(line.Name);
            }
        }

        contributions.Sort(static (a, b) => b.Amount.High.CompareTo(a.Amount.High));
        return new SubstanceAmount(sum, contributions, notExcluded, unstated);
    }

    private decimal Open(int line) => formula.Contents[line].IsMixtureOfUnknownParts ? 100 : formula.Contents[line].Unaccounted;
}
