using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Declaring;

/// <summary>The name of a material on a label, by market.</summary>
/// <param name="Text">The name; <see langword="null"/> where none is known.</param>
/// <param name="Rules">The rules that chose it.</param>
/// <param name="Note">What to check before it is printed.</param>
internal sealed record LabelName(string? Text, IReadOnlyList<string> Rules, string? Note = null)
{
    /// <summary>Trivial names of the European glossary that are not English, with the English ones. Recalled; to be compared with 21 CFR 701.3(c).</summary>
    private static readonly Dictionary<string, string> English = new(StringComparer.OrdinalIgnoreCase)
    {
        ["Aqua"] = "Water",
        ["Parfum"] = "Fragrance",
        ["Aroma"] = "Flavor",
        ["Mel"] = "Honey",
        ["Lac"] = "Milk",
        ["Ovum"] = "Egg",
        ["Faex"] = "Yeast",
        ["Maris Sal"] = "Sea Salt",
        ["Cera Alba"] = "Beeswax",
        ["Cera Flava"] = "Beeswax",
        ["Paraffinum Liquidum"] = "Mineral Oil",
        ["Cera Microcristallina"] = "Microcrystalline Wax",
        ["Adeps Bovis"] = "Tallow",
        ["Adeps Suillus"] = "Lard",
        ["Olus Oil"] = "Vegetable Oil",
    };

    /// <summary>The name of a part of a material in a market.</summary>
    public static LabelName Of(MaterialPartShare part, Authority law)
    {
        var inci = part.Ingredient is { Parts.Count: 0 } record ? European(record) ?? part.InciName : part.InciName;
        if (law != Authority.Us)
        {
            return new LabelName(inci, IsColourIndex(inci) ? ["EU-ING-06"] : ["EU-ING-16"]);
        }

        if (part.Ingredient?.Names.FirstOrDefault(IsAmerican) is { } american)
        {
            return new LabelName(american.Text, ["US-ING-08"]);
        }

        if (inci is not null && English.TryGetValue(inci, out var english))
        {
            return new LabelName(english, ["US-ING-08"]);
        }

        if (inci is not null && IsColourIndex(inci))
        {
            return new LabelName(part.Name, ["US-ING-08"], $"The catalogue holds no American name for {inci}; look up the name under which the colour additive is listed, and print that.");
        }

        return inci is not null && part.Ingredient is { } plant && IsBotanical(plant, inci)
            ? new LabelName($"{part.Name} ({inci})", ["US-ING-08"], "The English common name stands before the Latin one; compare it with the dictionary that 21 CFR 701.3(c) names.")
            : new LabelName(inci, ["US-ING-08"]);
    }

    /// <summary>Whether a material is printed among the colourants.</summary>
    public static bool IsColourant(MaterialPartShare part) =>
        part.Ingredient?.Kind == IngredientKind.Colourant || IsColourIndex(part.Ingredient is { } record ? European(record) : part.InciName);

    /// <summary>Whether a material is perfume: an essential oil, or one that is sold as perfume or flavour.</summary>
    public static bool IsFragrance(MaterialPartShare part) =>
        part.Ingredient?.Kind == IngredientKind.EssentialOil
        || part.InciName?.ToUpperInvariant() is "PARFUM" or "AROMA" or "FRAGRANCE" or "FLAVOR";

    // Where a record has several INCI names they are names of one thing: a colour index number leads, the American name is marked by its note.
    private static string? European(Ingredient ingredient)
    {
        var names = ingredient.Names.Where(n => n.Kind == NameKind.Inci && !IsAmerican(n)).Select(n => n.Text).ToList();
        return names.Find(IsColourIndex) ?? names.FirstOrDefault();
    }

    private static bool IsAmerican(IngredientName name) =>
        name.Kind == NameKind.Inci && name.Note?.Contains("United States", StringComparison.Ordinal) == true;

    // CI and five digits, such as CI 77491.
    private static bool IsColourIndex(string? name) =>
        name is not null && name.Length >= 8 && name.StartsWith("CI ", StringComparison.Ordinal) && name.AsSpan(3, 5).IndexOfAnyExceptInRange('0', '9') < 0;

    /// <summary>Whether an INCI name is botanical Latin: of a plant material, and its first word is no word of the English name.</summary>
    private static bool IsBotanical(Ingredient ingredient, string inci) =>
        ingredient.Origin?.From != OriginKind.Animal && ingredient.Origin?.From != OriginKind.Mineral
        && ingredient.Kind is IngredientKind.Oil or IngredientKind.Butter or IngredientKind.Wax or IngredientKind.EssentialOil or IngredientKind.Extract
            or IngredientKind.Hydrosol or IngredientKind.Powder or IngredientKind.Starch or IngredientKind.Resin
        && inci.Split(' ') is { Length: > 2 } words
        && !ingredient.CommonName().Contains(words[0], StringComparison.OrdinalIgnoreCase);
}
