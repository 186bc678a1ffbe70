using Materia.Catalogue;
using Materia.Formulation.Normalising;

namespace Materia.Formulation.Scopes;

/// <summary>Reads the word of a set of ingredients with what it names looked up in the release.</summary>
internal static class ScopeReading
{
    /// <summary>The set; <see langword="null"/> with a fault where the word has no known form or names nothing.</summary>
    public static IngredientScope? Read(string text, string pointer, Release release, FaultList faults)
    {
        if (!IngredientScope.TryParse(text, out var scope))
        {
            faults.Add(pointer, $"\"{Fault.Shorten(text)}\" names no set of ingredients. Write one of the forms {IngredientScope.Forms}.");
            return null;
        }

        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var word = text[(colon + 1)..];
        switch (text[..colon])
        {
            case "ingredient" when release.FindIngredient(word) is null && release.FindPresentId(word) is { } present:
                return IngredientScope.TryParse($"ingredient:{present}", out var renamed) ? renamed : null;
            case "ingredient" when release.FindIngredient(word) is null:
                faults.Add(new FormulaFault(pointer, $"\"{Fault.Shorten(word)}\" is not an ingredient of the catalogue. Use an ingredient's id, such as \"ingredient:shea-butter\".") { UnknownIngredient = word });
                return null;
            case "group" when release.FindSubstitutionGroup(word) is null:
                faults.Add(pointer, $"\"{Fault.Shorten(word)}\" is not a substitution group; GET /v1/substitution-groups lists them.");
                return null;
            case "function" when !release.Content.Ingredients.Any(i => i.Functions.Any(f => f.Function == word)):
                faults.Add(pointer, $"No ingredient has the function \"{Fault.Shorten(word)}\"; GET /v1/functions lists them.");
                return null;
            default:
                return scope;
        }
    }
}
