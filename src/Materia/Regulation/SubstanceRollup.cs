using Materia.Catalogue.Regulated;
using Materia.Regulation.Contents;

namespace Materia.Regulation;

/// <summary>Adds up what the materials of a formula hold of a regulated substance.</summary>
public static class SubstanceRollup
{
    /// <summary>
    /// The amount of all <paramref name="members"/> together, each counted with its factor. Something that answers to several members
    /// counts once, for the first of them.
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <param name="members">What counts.</param>
    /// <param name="except">Ids of ingredients that are not meant.</param>
    /// <param name="mayBeUnstated">
    /// Whether the substance is one that natural materials hold without saying so, a fragrance substance; what is not accounted for
    /// in them then counts as not excluded.
    /// </param>
    public static SubstanceAmount Of(
        RegulatedFormula formula, IReadOnlyList<RegulatedMember> members, IReadOnlyList<string> except, bool mayBeUnstated)
    {
        var contributions = new List<Contribution>();
        var unstated = new List<string>();
        decimal notExcluded = 0;
        for (var i = 0; i < formula.Lines.Count; i++)
        {
            var (line, contents) = (formula.Lines[i], formula.Contents[i]);
            if (line.Percent == 0 || except.Contains(line.Ingredient.Id, StringComparer.Ordinal))
            {
                continue;
            }

            if (In(contents, members, out var share))
            {
                contributions.Add(new Contribution(line.Name, line.Percent, share, share * (line.Percent / 100)));
            }
            else if (contents.IsMixtureOfUnknownParts || (mayBeUnstated && contents.Unaccounted > 0))
            {
                notExcluded += line.Percent * (contents.IsMixtureOfUnknownParts ? 100 : contents.Unaccounted) / 100;
                unstated.Add(line.Name);
            }
        }

        contributions.Sort((a, b) => b.Amount.High.CompareTo(a.Amount.High));
        return new SubstanceAmount(
            contributions.Aggregate(Amount.None, (sum, c) => sum + c.Amount), contributions, notExcluded, unstated);
    }

    private static bool In(IngredientContents contents, IReadOnlyList<RegulatedMember> members, out Amount share)
    {
        share = Amount.None;
        HashSet<int>? counted = null;
        foreach (var member in members)
        {
            foreach (var key in IngredientContents.Keys(member))
            {
                foreach (var place in contents.Places(key))
                {
                    if ((counted ??= []).Add(place))
                    {
                        share += contents.Shares[place].Share * member.Factor;
                    }
                }
            }
        }

        return counted is not null;
    }
}
