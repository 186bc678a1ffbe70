using Materia.Catalogue;

namespace Materia.Search.Indexing;

/// <summary>Which kingdoms and families of allergens each ingredient holds, its parts included: what is to be left out must be in none of them.</summary>
internal sealed class OriginsHeld
{
    private readonly OriginKind[][] kingdoms;
    private readonly AllergenFamily[][] allergens;

    /// <summary>Gathers the origins of <paramref name="ingredients"/> and of those of their parts that are among them.</summary>
    public OriginsHeld(IReadOnlyList<Ingredient> ingredients)
    {
        var origins = ingredients.Where(i => i.Origin is not null).ToDictionary(i => i.Id, i => i.Origin!, StringComparer.Ordinal);
        Origin[][] held = [.. ingredients.Select(i => i.Parts.Select(p => p.Ingredient).OfType<string>().Prepend(i.Id).Where(origins.ContainsKey).Select(id => origins[id]).ToArray())];
        kingdoms = [.. held.Select((of, i) => ingredients[i].Origin is null ? [] : of.Select(o => o.From).Distinct().ToArray())];
        allergens = [.. held.Select(of => of.SelectMany(o => o.AllergenFamilies).Distinct().ToArray())];
    }

    /// <summary>True when an ingredient is known to hold none of the kingdoms and families; of one without an origin nothing is known.</summary>
    public bool HoldsNone(int ingredient, IReadOnlyList<OriginKind> ofKingdoms, IReadOnlyList<AllergenFamily> ofFamilies) =>
        (ofKingdoms.Count == 0 && ofFamilies.Count == 0)
        || (kingdoms[ingredient].Length > 0
            && !Array.Exists(kingdoms[ingredient], ofKingdoms.Contains)
            && !Array.Exists(allergens[ingredient], ofFamilies.Contains));
}
