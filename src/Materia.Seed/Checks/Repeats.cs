using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Nothing is said twice: no two statements of a list are the same in every member, and no allergen family stands twice.</summary>
internal static class Repeats
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            // Statements of different sorts never compare equal, and shares are looked at in their profile.
            var seen = new HashSet<Statement>();
            foreach (var (statement, at) in Statements.Of(ingredient, place))
            {
                if (statement is not (FattyAcidShare or TriacylglycerolShare) && !seen.Add(statement))
                {
                    faults.Add(at, "the same statement stands here twice; keep one");
                }
            }

            foreach (var family in ingredient.Origin?.AllergenFamilies.CountBy(f => f) ?? [])
            {
                if (family.Value > 1)
                {
                    faults.Add(place.Member("origin"), $"allergen family {KebabCase<AllergenFamily>.Word(family.Key)} stands twice; keep one");
                }
            }
        }
    }
}
