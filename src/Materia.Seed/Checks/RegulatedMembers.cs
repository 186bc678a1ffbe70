using Materia.Catalogue.Regulated;
using Materia.Seed.Reading;
using Materia.Seed.Tables;

namespace Materia.Seed.Checks;

/// <summary>
/// What counts towards limits and allergens: each member belongs to a row that exists, has an identity, stands once, names an
/// ingredient that exists and counts for more than nothing; and every limit and allergen has a member.
/// </summary>
internal static class RegulatedMembers
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var ingredients = seed.Ingredients.Select(i => i.Value.Id).Concat(seed.UnreadIngredients).ToHashSet(StringComparer.Ordinal);
        Check(new Owners(LimitTable.Path, LimitTable.Owner, seed.Regulation.Limits.IsComplete, [.. seed.Regulation.Limits.Rows.Select(l => (l.Value.Id, l.Place))]), seed.Regulation.LimitMembers, ingredients, faults);
        Check(new Owners(AllergenTable.Path, AllergenTable.Owner, seed.Regulation.Allergens.IsComplete, [.. seed.Regulation.Allergens.Rows.Select(a => (a.Value.Id, a.Place))]), seed.Regulation.AllergenMembers, ingredients, faults);
    }

    private static void Check(Owners owners, TableRows<OwnedMember> members, HashSet<string> ingredients, FaultList faults)
    {
        var known = owners.Rows.Select(o => o.Id).ToHashSet(StringComparer.Ordinal);
        var named = new HashSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<(string, string?, string?, string?)>();
        foreach (var (row, place) in members.Rows)
        {
            named.Add(row.Owner);
            if (owners.IsComplete && !known.Contains(row.Owner))
            {
                faults.Add(place, $"{owners.Column} \"{row.Owner}\" is not in {owners.Path}; add a row or correct the key");
            }

            if (!seen.Add((row.Owner, row.Member.Cas, row.Member.InciName, row.Member.Ingredient)))
            {
                faults.Add(place, $"\"{row.Member.Name}\" stands twice in {row.Owner}; keep one row");
            }

            CheckMember(row.Member, place, ingredients, faults);
        }

        foreach (var (id, place) in owners.Rows.Where(o => members.IsComplete && !named.Contains(o.Id)))
        {
            faults.Add(place, $"nothing counts towards {id}; add a row that names it to the table of members");
        }
    }

    private static void CheckMember(RegulatedMember member, Place place, HashSet<string> ingredients, FaultList faults)
    {
        if (member is { Cas: null, InciName: null, Ingredient: null })
        {
            faults.Add(place, $"\"{member.Name}\" has no identity; give cas, inci_name or ingredient");
        }

        if (member.Ingredient is { } id && !ingredients.Contains(id))
        {
            faults.Add(place, $"ingredient \"{id}\" does not exist; add it or correct the id");
        }

        if (member.Factor <= 0)
        {
            faults.Add(place, "factor is not above 0; give what one part by mass counts, or leave it out");
        }
    }

    private sealed record Owners(string Path, string Column, bool IsComplete, IReadOnlyList<(string Id, Place Place)> Rows);
}
