using Materia.Catalogue.Regulated;
using Materia.Regulation.Allergens;

namespace Materia.Regulation.Declaring;

/// <summary>Puts the names of a label in order and adds the allergens that must be named.</summary>
internal static class DeclarationList
{
    /// <summary>The share at which the free order begins [%]: below it in Europe, at it in the United States.</summary>
    private const decimal Bound = 1m;

    /// <summary>The entries in the order in which they are printed.</summary>
    public static IReadOnlyList<DeclarationEntry> Of(LabelItems items, IReadOnlyList<AllergenFinding> allergens, Authority law)
    {
        var appended = Append(items, allergens);
        var own = items.All.Select(i => new DeclarationEntry
        {
            Name = i.Name,
            Group = i.IsColourant ? DeclarationGroup.Colourant : IsFree(i.Weight, law) ? DeclarationGroup.Free : DeclarationGroup.Ordered,
            Share = i.Share.Trimmed(),
            Ingredients = [.. i.Lines.Select(l => l.Line).Distinct(StringComparer.Ordinal)],
            Rules = [.. Order(i, law), .. i.Rules.Order(StringComparer.Ordinal)],
            Note = i.Note ?? Straddle(i.Share, law),
        });
        return [.. own.Concat(appended.Select(f => Entry(f, law))).OrderBy(e => e.Group).ThenByDescending(Weight)];
    }

    /// <summary>Whether a share may stand in the free part.</summary>
    public static bool IsFree(decimal share, Authority law) => law == Authority.Us ? share <= Bound : share < Bound;

    private static decimal Weight(DeclarationEntry entry) => entry.Share.Typical ?? (entry.Share.Low + entry.Share.High) / 2;

    /// <summary>
    /// The allergens that are not on the list under their name yet. An ingredient of that name stays where it is and is printed once;
    /// a material that is a listed natural extract as a whole is renamed to the group's name.
    /// </summary>
    private static List<AllergenFinding> Append(LabelItems items, IReadOnlyList<AllergenFinding> allergens)
    {
        var appended = new List<AllergenFinding>();
        foreach (var finding in allergens.Where(f => f.Declared))
        {
            var same = items.All.Find(i => string.Equals(i.Name, finding.DeclarationName, StringComparison.OrdinalIgnoreCase));
            if (same is not null)
            {
                same.Rules.Add("EU-ING-15");
                continue;
            }

            var whole = finding.NaturalExtract ? items.All.FindAll(i => IsWholly(i, finding)) : [];
            if (whole.Count == 0)
            {
                appended.Add(finding);
                continue;
            }

            foreach (var other in whole.Skip(1))
            {
                other.Lines.ForEach(l => whole[0].Add(l.Line, l.Share, []));
                items.All.Remove(other);
            }

            whole[0].Name = finding.DeclarationName;
            whole[0].Rules.Add("EU-ING-13");
        }

        return appended;
    }

    private static bool IsWholly(LabelItem item, AllergenFinding finding) =>
        item.Name is not ("Parfum" or "Aroma")
        && item.Lines.TrueForAll(l => finding.Contributions.Any(c => c.Ingredient == l.Line && c.ShareOfIngredient.High == 100 && c.Amount.High == l.Share.High));

    private static DeclarationEntry Entry(AllergenFinding finding, Authority law) => new()
    {
        Name = finding.DeclarationName,
        Group = IsFree(finding.Amount.Typical ?? finding.Amount.High, law) ? DeclarationGroup.Allergen : DeclarationGroup.Ordered,
        Share = finding.Amount,
        Ingredients = [.. finding.Contributions.Select(c => c.Ingredient)],
        Rules = ["EU-ING-10", finding.NaturalExtract ? "EU-ING-13" : "EU-ING-11"],
    };

    private static IEnumerable<string> Order(LabelItem item, Authority law) => (item.IsColourant, IsFree(item.Weight, law), law) switch
    {
        (true, _, Authority.Us) => ["US-ING-03"],
        (true, _, _) => ["EU-ING-05"],
        (_, true, Authority.Us) => item.Weight == Bound ? ["US-ING-03", "US-ING-04"] : ["US-ING-03"],
        (_, true, _) => ["EU-ING-03"],
        (_, _, Authority.Us) => ["US-ING-01"],
        _ => item.Weight == Bound ? ["EU-ING-02", "EU-ING-04"] : ["EU-ING-02"],
    };

    private static string? Straddle(Amount share, Authority law) => IsFree(share.Low, law) != IsFree(share.High, law)
        ? "The supplier's range spans 1 %: ask for the exact share, since it decides whether the place is free."
        : null;
}
