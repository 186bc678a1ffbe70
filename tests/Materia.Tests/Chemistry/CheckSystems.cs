using Materia.Catalogue;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry;

/// <summary>
/// Which composition stands for the system of a check row. A row's own sample comes first; a named oil without one takes the composition
/// of the same oil from another paper, and where none is listed the catalogue's own.
/// </summary>
internal static class CheckSystems
{
    private static readonly Dictionary<string, string> Samples = new(StringComparer.Ordinal)
    {
        ["castor"] = "goering_castor",
        ["corn"] = "goering_corn",
        ["cottonseed"] = "goering_cottonseed",
        ["crambe"] = "goering_crambe",
        ["magne_cottonseed"] = "ryan_cottonseed_once_refined",
        ["magne_soybean"] = "ryan_soybean_once_refined",
        ["peanut"] = "goering_peanut",
        ["rapeseed_high_erucic"] = "peterson_rapeseed_high_erucic",
        ["rapeseed_low_erucic"] = "goering_rapeseed_low_erucic",
        ["safflower"] = "goering_safflower",
        ["sesame"] = "goering_sesame",
        ["soybean"] = "goering_soybean",
        ["sunflower"] = "goering_sunflower",
    };

    private static readonly Dictionary<string, string> Ingredients = new(StringComparer.Ordinal)
    {
        ["jojoba"] = "jojoba-oil",
        ["sunflower_high_oleic"] = "sunflower-oil-high-oleic",
    };

    /// <summary>The ingredient that stands for a system; <see langword="null"/> when its composition is not known.</summary>
    public static Ingredient? Find(string system)
    {
        if (Ingredients.TryGetValue(system, out var id))
        {
            return SeedCatalogue.Ingredient(id);
        }

        var key = Samples.GetValueOrDefault(system, system);
        return CheckFiles.Compositions.Contains(key) ? TestFat.OfCheck(key) : null;
    }
}
