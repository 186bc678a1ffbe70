using Materia.Catalogue;

namespace Materia.Regulation.Lookup;

/// <summary>Something in an ingredient that a rule may name.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Keys">The keys by which a rule may name it: CAS numbers, INCI names in capitals, the id.</param>
/// <param name="As">Where it stands in the ingredient.</param>
internal sealed record NamedContent(string Name, IReadOnlyList<string> Keys, MatchedAs As)
{
    // Composites of composites are few; a deeper chain would be a loop, which the seed check refuses.
    private const int DeepestPart = 8;

    /// <summary>The key of an ingredient's id; it never looks like a number or a name.</summary>
    public static string IdKey(string id) => "id:" + id;

    /// <summary>The ingredient itself first, then its parts and theirs, then the constituents of all of them where asked for.</summary>
    public static IEnumerable<NamedContent> Of(Ingredient ingredient, Release release, bool withConstituents)
    {
        var contents = new List<NamedContent>();
        var constituents = new List<NamedContent>();
        Add(ingredient, release, MatchedAs.Itself, 0, contents, constituents);
        return withConstituents ? contents.Concat(constituents) : contents;
    }

    private static void Add(Ingredient ingredient, Release release, MatchedAs place, int depth, List<NamedContent> contents, List<NamedContent> constituents)
    {
        // The numbers and names of a mixture are those of its parts.
        var own = ingredient.Parts.Count > 0 ? [] : ingredient.Numbers.Where(n => n.Registry == Registry.Cas).Select(n => n.Number)
            .Concat(ingredient.Names.Where(n => n.Kind == NameKind.Inci).Select(n => n.Text.ToUpperInvariant()));
        contents.Add(new(ingredient.CommonName(), [.. own, IdKey(ingredient.Id)], place));
        constituents.AddRange(ingredient.Constituents.Select(c => new NamedContent(
            c.Substance, [c.Substance.ToUpperInvariant(), .. c.Cas is { } cas ? [cas] : Array.Empty<string>()], MatchedAs.Constituent)));
        foreach (var part in ingredient.Parts)
        {
            if (depth < DeepestPart && part.Ingredient is { } id && release.FindIngredient(id) is { } known)
            {
                Add(known, release, MatchedAs.Part, depth + 1, contents, constituents);
            }

            contents.Add(new(part.InciName, [part.InciName.ToUpperInvariant(), .. part.Cas is { } cas ? [cas] : Array.Empty<string>()], MatchedAs.Part));
        }
    }
}
