using System.Collections.Frozen;
using System.Runtime.CompilerServices;
using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>What follows from each ingredient of a release, worked out at its first use and kept as long as the release.</summary>
internal sealed class MaterialIndex
{
    private static readonly ConditionalWeakTable<Release, MaterialIndex> Indexes = [];

    private readonly Release release;
    private readonly FrozenDictionary<string, Lazy<Material>> materials;

    private MaterialIndex(Release release)
    {
        this.release = release;
        materials = release.Content.Ingredients.ToFrozenDictionary(
            i => i.Id, i => new Lazy<Material>(() => Material.Of(i, release, fromCatalogue: true)), StringComparer.Ordinal);
    }

    /// <summary>The index of <paramref name="release"/>.</summary>
    public static MaterialIndex For(Release release) => Indexes.GetValue(release, r => new MaterialIndex(r));

    /// <summary>What follows from <paramref name="ingredient"/>; a maker's own is worked out anew, even under a catalogue id.</summary>
    public Material Find(Ingredient ingredient) =>
        materials.TryGetValue(ingredient.Id, out var known) && ReferenceEquals(release.FindIngredient(ingredient.Id), ingredient)
            ? known.Value
            : Material.Of(ingredient, release, fromCatalogue: false);
}
