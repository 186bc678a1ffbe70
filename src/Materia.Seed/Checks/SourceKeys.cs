using Materia.Catalogue;
using Materia.Formulation;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Every source that a statement names exists, and every source is named by a statement, a method or the comedogenic caveat.</summary>
internal static class SourceKeys
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var known = seed.Sources.Select(s => s.Value.Id).Concat(seed.UnreadSources).ToHashSet(StringComparer.Ordinal);
        var named = AllMethods.ById.Values.SelectMany(m => m.Sources).Concat(ComedogenicNote.CaveatSources).ToHashSet(StringComparer.Ordinal);
        foreach (var (statement, place) in Statements.Of(seed))
        {
            Follow(statement.Source, place, "source");
            if (statement.CheckIn is { } work)
            {
                Follow(work, place, "checkIn");
            }
        }

        // While anything could not be read, what it names is not known, and nothing can be called unused.
        if (seed.IsComplete)
        {
            foreach (var (source, place) in seed.Sources.Where(s => !named.Contains(s.Value.Id)))
            {
                faults.Add(place.Member("id"), $"source \"{source.Id}\" is named by nothing; name it where it was used or remove the file");
            }
        }

        void Follow(string key, Place place, string member)
        {
            named.Add(key);
            if (!known.Contains(key))
            {
                faults.Add(place, $"{member} \"{key}\" does not exist; add {SeedDirectory.Sources}/{key}.json or correct the key");
            }
        }
    }
}
