using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>The keys of the tables: none repeated, those of product types and substitution groups in kebab case. That none is empty the reading sees to.</summary>
internal static class TableKeys
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        Unique(seed.FattyAcids.Select(a => (a.Value.Symbol, a.Place)), "symbol", faults);
        Unique(seed.Uses.Select(u => (u.Value.Id, u.Place)), "id", faults);
        Unique(seed.SubstitutionGroups.Select(g => (g.Value.Id, g.Place)), "id", faults);
        var ids = seed.Uses.Select(u => (u.Value.Id, u.Place)).Concat(seed.SubstitutionGroups.Select(g => (g.Value.Id, g.Place)));
        foreach (var (id, place) in ids.Where(i => !KebabId.IsValid(i.Id)))
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
