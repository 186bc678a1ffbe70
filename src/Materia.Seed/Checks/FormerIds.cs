using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Former ids: kebab case, no present id of any ingredient, each the former id of one ingredient only.</summary>
internal static class FormerIds
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var present = seed.Ingredients.Select(i => i.Value.Id).ToHashSet(StringComparer.Ordinal);
        var former = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            for (var i = 0; i < ingredient.FormerIds.Count; i++)
            {
                var id = ingredient.FormerIds[i];
                var at = place.Item("formerIds", i);
                if (!KebabId.IsValid(id))
                {
                    faults.Add(at, $"former id \"{id}\" is not in kebab case; write it as it once was");
                }

                if (present.Contains(id))
                {
                    faults.Add(at, $"former id \"{id}\" is the present id of an ingredient; an id is never used again for something else");
                }

                if (!former.TryAdd(id, ingredient.Id))
                {
                    faults.Add(at, $"former id \"{id}\" is one of {former[id]} too; keep it on the ingredient that it redirects to");
                }
            }
        }
    }
}
