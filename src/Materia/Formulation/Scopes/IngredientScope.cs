using Materia.Catalogue;

namespace Materia.Formulation.Scopes;

/// <summary>A set of ingredients named by one word, such as <c>kind:clay</c> or <c>allergen:tree-nut</c>: what exclusions and preferences are written in.</summary>
public sealed class IngredientScope
{
    private readonly Func<Ingredient, bool> holds;

    private IngredientScope(string text, Func<Ingredient, bool> holds) => (Text, this.holds) = (text, holds);

    /// <summary>The forms that <see cref="TryParse"/> reads, for messages.</summary>
    public static string Forms { get; } =
        "kind:clay, group:stiff-waxes, ingredient:castor-oil, origin:animal, allergen:tree-nut, species:palm, function:perfuming, charge:anionic";

    /// <summary>The words that <see cref="TryParseOrigin"/> reads: kingdoms, allergen families and the named groups of species.</summary>
    public static IReadOnlyList<string> OriginWords { get; } =
        [.. KebabCase<OriginKind>.Words, .. KebabCase<AllergenFamily>.Words, .. SpeciesGroups.Words];

    /// <summary>The word as it was written.</summary>
    public string Text { get; }

    /// <summary>Whether <paramref name="ingredient"/> belongs to the set. An ingredient whose origin is not stated belongs to no set of origins.</summary>
    public bool Holds(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return holds(ingredient);
    }

    /// <summary>Reads a word in one of the <see cref="Forms"/>; <see langword="false"/> when it has none of them.</summary>
    public static bool TryParse(string? text, out IngredientScope? scope)
    {
        scope = null;
        var colon = text?.IndexOf(':', StringComparison.Ordinal) ?? -1;
        if (text is null || colon <= 0 || colon == text.Length - 1)
        {
            return false;
        }

        if (Find(text[..colon], text[(colon + 1)..]) is { } found)
        {
            scope = new(text, found);
        }

        return scope is not null;
    }

    /// <summary>Reads a kingdom, an allergen family or a group of species without its prefix, such as <c>animal</c>, <c>tree-nut</c> or <c>palm</c>.</summary>
    public static bool TryParseOrigin(string? word, out IngredientScope? scope)
    {
        scope = null;
        var form = word is null ? null
            : KebabCase<OriginKind>.TryParse(word, out _) ? "origin:" + word
            : KebabCase<AllergenFamily>.TryParse(word, out _) ? "allergen:" + word
            : SpeciesGroups.Find(word) is not null ? "species:" + word
            : null;
        return form is not null && TryParse(form, out scope);
    }

    private static Func<Ingredient, bool>? Find(string form, string word) => form switch
    {
        "kind" => KebabCase<IngredientKind>.TryParse(word, out var kind) ? i => i.Kind == kind : null,
        "group" => i => i.SubstitutionGroups.Any(g => g.Group == word),
        "ingredient" => i => i.Id == word || i.Parts.Any(p => p.Ingredient == word),
        "origin" => KebabCase<OriginKind>.TryParse(word, out var from) ? i => i.Origin?.From == from : null,
        "allergen" => KebabCase<AllergenFamily>.TryParse(word, out var family) ? i => i.Origin?.AllergenFamilies.Contains(family) == true : null,
        "species" => SpeciesGroups.Find(word) is { } genera ? i => SpeciesGroups.Genus(i) is { } genus && genera.Contains(genus) : null,
        "function" => i => i.Functions.Any(f => f.Function == word),
        "charge" => KebabCase<IonicCharge>.TryParse(word, out var charge) ? i => i.Charge?.Charge == charge : null,
        _ => null,
    };
}
