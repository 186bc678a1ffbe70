using Materia.Seed.Reading;
using Materia.Seed.Tables;

namespace Materia.Seed.Checks;

/// <summary>Usual shares by type of product: a type that exists, once, and percentages in order.</summary>
internal static class UsageLevels
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var uses = seed.Uses.Select(u => u.Value.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            foreach (var (level, at) in Statements.Items(ingredient.UsageLevels, place, "usageLevels"))
            {
                new RangeOrder(level.Low, level.Typical, level.High).CheckPercent(at, faults);
                if (seed.HasUses && !uses.Contains(level.Use))
                {
                    faults.Add(at, $"use \"{level.Use}\" is not in {UseTable.Path}; add a row or correct the key");
                }

                if (!seen.Add(level.Use))
                {
                    faults.Add(at, $"use \"{level.Use}\" stands twice; keep one line for each type of product");
                }
            }
        }
    }
}
