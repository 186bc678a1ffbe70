using Materia.Catalogue;
using Materia.Formulation.Normalising;

namespace Materia.Formulation.Optimising;

/// <summary>Reads a pantry.</summary>
internal static class Pantry
{
    /// <summary>As many as a formula may have lines.</summary>
    public const int Most = NormalisedFormula.MostLines;

    /// <summary>The materials in the order given, each once; of use only when no fault was added.</summary>
    public static IReadOnlyList<MaterialColumn> Read(IReadOnlyList<PantryItem> items, string pointer, Release release, FaultList faults, List<string> notes)
    {
        if (items.Count > Most)
        {
            faults.Add(pointer, $"A pantry has at most {Most} materials, and this one has {items.Count}. Leave out what does not matter here.");
            return [];
        }

        var rules = new MaterialRules(release, faults, notes);
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var columns = new List<MaterialColumn>();
        for (var i = 0; i < items.Count; i++)
        {
            var (item, at) = (items[i], $"{pointer}/{i}");
            if (item.PricePerKilogram is <= 0)
            {
                faults.Add($"{at}/pricePerKilogram", "A price is over nought. Correct it, or leave it out where it is not known.");
            }

            if (rules.Find(item.Ingredient, item.Own, at) is not { } material)
            {
                continue;
            }

            if (seen.TryGetValue(material.Ingredient.Id, out var earlier))
            {
                faults.Add($"{at}/{(material.Own ? "own/name" : "ingredient")}", $"\"{material.Ingredient.Id}\" stands in the pantry at {pointer}/{earlier} already. Name each material once.");
                continue;
            }

            seen.Add(material.Ingredient.Id, i);
            columns.Add(new MaterialColumn(material.Ingredient, material.Parts, item.PricePerKilogram));
        }

        return columns;
    }
}
