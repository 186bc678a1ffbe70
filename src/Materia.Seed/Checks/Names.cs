using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Each ingredient has exactly one common name, and it comes first; an INCI name is that of one substance.</summary>
internal static class Names
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            var common = Statements.Items(ingredient.Names, place, "names").Where(n => n.Value.Kind == NameKind.Common).ToList();
            if (common.Count == 0)
            {
                faults.Add(place.Member("names"), "no common name; put the English name first, with kind common");
            }
            else if (ingredient.Names[0].Kind != NameKind.Common)
            {
                faults.Add(common[0].Place, $"the common name \"{common[0].Value.Text}\" is not the first name; move it to the top");
            }

            foreach (var (name, at) in common.Skip(1))
            {
                faults.Add(at, $"\"{name.Text}\" is a second common name; make it a synonym");
            }

            foreach (var (name, at) in Statements.Items(ingredient.Names, place, "names").Where(n => n.Value.Kind == NameKind.Inci))
            {
                if (name.Text.Contains("(and)", StringComparison.OrdinalIgnoreCase))
                {
                    faults.Add(at, $"\"{name.Text}\" joins several INCI names; give each its line in \"parts\"");
                }
            }
        }
    }
}
