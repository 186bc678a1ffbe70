using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>No mixture is, over however many steps, a part of itself. That nothing names itself as a part <see cref="Parts"/> sees to.</summary>
internal static class PartCycles
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var mixtures = new Dictionary<string, Placed<Ingredient>>(StringComparer.Ordinal);
        foreach (var placed in seed.Ingredients.Where(i => i.Value.Parts.Count > 0))
        {
            mixtures.TryAdd(placed.Value.Id, placed);
        }

        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var id in mixtures.Keys)
        {
            Follow(id, [], done, mixtures, faults);
        }
    }

    private static void Follow(
        string id, List<string> path, HashSet<string> done, Dictionary<string, Placed<Ingredient>> mixtures, FaultList faults)
    {
        if (!mixtures.TryGetValue(id, out var mixture) || done.Contains(id))
        {
            return;
        }

        path.Add(id);
        foreach (var (part, at) in Statements.Items(mixture.Value.Parts, mixture.Place, "parts"))
        {
            if (part.Ingredient is not { } next || next == id)
            {
                continue;
            }

            if (path.IndexOf(next) is >= 0 and var start)
            {
                faults.Add(at, $"{string.Join(" holds ", path.Skip(start))} holds {next}: a mixture cannot be a part of itself; correct one of the ids");
            }
            else
            {
                Follow(next, path, done, mixtures, faults);
            }
        }

        path.RemoveAt(path.Count - 1);
        done.Add(id);
    }
}
