using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>The keys of the tables: none repeated, those that are ids in kebab case. That none is empty the reading sees to.</summary>
internal static class TableKeys
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        Unique(seed.FattyAcids.Select(a => (a.Value.Symbol, a.Place)), "symbol", faults);
        Ids(seed.Uses.Select(u => (u.Value.Id, u.Place)), faults);
        Ids(seed.SubstitutionGroups.Select(g => (g.Value.Id, g.Place)), faults);
        Ids(seed.Needs.Needs.Rows.Select(n => (n.Value.Id, n.Place)), faults);
        Ids(seed.Regulation.Limits.Rows.Select(l => (l.Value.Id, l.Place)), faults);
        Ids(seed.Regulation.Allergens.Rows.Select(a => (a.Value.Id, a.Place)), faults);
    }

    private static void Ids(IEnumerable<(string Key, Place Place)> rows, FaultList faults)
    {
        var all = rows.ToList();
        Unique(all, "id", faults);
        foreach (var (id, place) in all.Where(i => !KebabId.IsValid(i.Key)))
        {
            faults.Add(place, $"id \"{id}\" is not in kebab case; use a-z, 0-9 and single hyphens between");
        }
    }

    private static void Unique(IEnumerable<(string Key, Place Place)> rows, string column, FaultList faults)
    {
        var seen = new Dictionary<string, Place>(StringComparer.Ordinal);
        foreach (var (key, place) in rows)
        {
            if (!seen.TryAdd(key, place))
            {
                faults.Add(place, $"{column} \"{key}\" stands in line {seen[key].Line} too; keep one row");
            }
        }
    }
}
