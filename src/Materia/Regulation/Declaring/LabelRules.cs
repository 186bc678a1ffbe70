using System.Collections.Frozen;
using Materia.Catalogue;

namespace Materia.Regulation.Declaring;

/// <summary>The rules of labelling by number. Percentages are by mass of the product at the moment of addition.</summary>
public static class LabelRules
{
    private const string Act = "eu-1223-2009";
    private const string Recalled = "recalled";
    private const string Article = "Article 19(1)(g)";

    /// <summary>All rules, in the order of their numbers.</summary>
    public static IReadOnlyList<LabelRule> All { get; } =
    [
        new("EU-ING-01", "List every ingredient under the word Ingredients.", "moh-cyprus-labelling", Article, Evidence.Secondary),
        new("EU-ING-02", "Order by weight at the moment of addition, the heaviest first.", "hpra-labelling", Article, Evidence.Secondary),
        new("EU-ING-03", "Ingredients below 1 % may come in any order after those of 1 % and more.", "label-consultancy-pages", Article, Evidence.Secondary),
        new("EU-ING-04", "Exactly 1 % belongs to the ordered part: below 1 % is strict.", Recalled, Article, Evidence.Memory),
        new("EU-ING-05", "Colourants other than hair dyes may follow the other ingredients in any order.", Recalled, Article, Evidence.Memory),
        new("EU-ING-06", "Colourants are printed by their CI number, or by the listed name where they have none.", Recalled, "Article 19(1)(g), Annex IV", Evidence.Memory),
        new("EU-ING-08", "The name of a nanomaterial carries (nano).", "moh-cyprus-labelling", Article, Evidence.Secondary),
        new("EU-ING-09", "Perfume and aromatic mixtures and their raw materials are printed as Parfum or Aroma.", "label-consultancy-pages", Article, Evidence.Secondary),
        new("EU-ING-10", "Each listed fragrance allergen above 0.001 % (leave-on) or 0.01 % (rinse-off) is printed by name besides Parfum.", "eu-cosmetics-annex-iii", "entries with the duty to name", Evidence.Published),
        new("EU-ING-11", "An allergen is summed over everything that brings it.", "label-consultancy-pages", "wording of Annex III", Evidence.Secondary),
        new("EU-ING-12", "The members of a group entry are added first, and the group's name is printed once.", "eu-cosmetics-annex-iii", "group entries", Evidence.Published),
        new("EU-ING-13", "A listed natural oil or extract is printed under its group name, and its listed constituents above the threshold as well.", Recalled, "Annex III, entries 347 to 367", Evidence.Memory),
        new("EU-ING-15", "An allergen used for another purpose is an ordinary ingredient, keeps its place by weight and is printed once.", Recalled, Article, Evidence.Memory),
        new("EU-ING-16", "Use the name of the Commission's glossary, or else a generally accepted one.", Recalled, "Articles 19(6) and 33", Evidence.Memory),
        new("EU-ING-17", "Impurities of raw materials are not ingredients.", Act, Article, Evidence.Published),
        new("EU-ING-18", "Technical aids that are no longer in the product are not ingredients.", Act, Article, Evidence.Published),
        new("EU-ING-22", "Of saponified oils print either what was added or what it became, in one way on the whole label.", Recalled, "practice of the trade", Evidence.Memory),
        new("EU-LAB-01", "Name and address of the responsible person.", "ages-labelling", "Article 19(1)(a)", Evidence.Secondary),
        new("EU-LAB-02", "Country of origin of an imported product.", "ages-labelling", "Article 19(1)(a)", Evidence.Secondary),
        new("EU-LAB-03", "Nominal content by weight or volume, but for packs under 5 g or 5 ml, samples and single uses.", Act, "Article 19(1)(b)", Evidence.Published),
        new("EU-LAB-05", "Date of minimum durability where it is 30 months or less.", "hpra-labelling", "Article 19(1)(c)", Evidence.Secondary),
        new("EU-LAB-06", "Period after opening where the minimum durability is more than 30 months.", "hpra-labelling", "Article 19(1)(c)", Evidence.Secondary),
        new("EU-LAB-09", "Precautions: the warnings of the annexes, and any others that the safety report asks for.", "moh-cyprus-labelling", "Article 19(1)(d)", Evidence.Secondary),
        new("EU-LAB-10", "Batch number or another reference.", "moh-cyprus-labelling", "Article 19(1)(e)", Evidence.Secondary),
        new("EU-LAB-11", "The function, unless it is clear from the presentation.", "ages-labelling", "Article 19(1)(f)", Evidence.Secondary),
        new("EU-LAB-12", "Particulars are indelible, easily legible and visible.", "moh-cyprus-labelling", "Article 19(1)", Evidence.Secondary),
        new("EU-LAB-15", "No claim of features that the product lacks.", Recalled, "Article 20; Regulation (EU) No 655/2013", Evidence.Memory),
        new("UK-01", "A responsible person and a product file in the United Kingdom.", "uk-opss-2023", "statutory guidance of May 2023", Evidence.Published),
        new("UK-03", "Great Britain keeps the earlier list of allergens.", "label-consultancy-pages", "page of a testing laboratory", Evidence.Secondary),
        new("UK-07", "Order of ingredients, durability, batch and function as in the European rules.", Recalled, "assimilated Article 19", Evidence.Memory),
        new("US-ING-01", "Order by predominance, the greatest share first.", "us-21-cfr-701", "21 CFR 701.3(a)", Evidence.Published),
        new("US-ING-02", "Fragrance and flavor may be listed as such.", "us-21-cfr-701", "21 CFR 701.3(a)", Evidence.Published),
        new("US-ING-03", "Ingredients of 1 % or less may follow in any order, and after them colour additives.", Recalled, "21 CFR 701.3(f)", Evidence.Memory),
        new("US-ING-04", "Exactly 1 % belongs to the free part, other than in Europe.", Recalled, "21 CFR 701.3(f)", Evidence.Memory),
        new("US-ING-08", "English names; botanical Latin alone is no name; colours by their listed or certified name.", Recalled, "21 CFR 701.3(c)", Evidence.Memory),
        new("US-ING-09", "Incidental ingredients without effect need not be named.", Recalled, "21 CFR 701.3(l)", Evidence.Memory),
        new("US-ALG-01", "No federal duty to name fragrance allergens is in force as far as was found.", "us-fragrance-allergen-agenda", "RIN 0910-AI90", Evidence.Published),
        new("US-LAB-01", "Statement of identity and net quantity on the principal display panel.", Recalled, "21 CFR 701.11, 701.13", Evidence.Memory),
        new("US-LAB-02", "Name and place of business of the maker, packer or distributor.", Recalled, "21 CFR 701.12", Evidence.Memory),
        new("US-LAB-03", "A domestic address or phone number, or an electronic contact, for adverse events.", "label-consultancy-pages", "FD&C Act, section 609(a)", Evidence.Secondary),
        new("US-WARN-01", "Where safety is not substantiated: \"Warning - The safety of this product has not been determined.\"", "us-21-cfr-740", "21 CFR 740.10(a)", Evidence.Published),
        new("US-WARN-03", "Foaming detergent bath products carry a caution.", Recalled, "21 CFR 740.17", Evidence.Memory),
        new("US-WARN-06", "A sunburn alert on products with alpha hydroxy acids is recommended, not binding.", "label-consultancy-pages", "guidance of January 2005", Evidence.Secondary),
        new("US-SOAP-01", "True soap without cosmetic claims is outside the cosmetic rules.", Recalled, "21 CFR 701.20", Evidence.Memory),
    ];

    /// <summary>Keys of the sources of all rules, and of those in which recalled ones should be looked up.</summary>
    public static IReadOnlyList<string> Sources { get; } = [.. All.Select(r => r.Source).Append(Act).Distinct(StringComparer.Ordinal)];

    private static readonly FrozenDictionary<string, LabelRule> ById = All.ToFrozenDictionary(r => r.Id, StringComparer.Ordinal);

    /// <summary>The rules of these numbers, in the order of the table, each once.</summary>
    /// <exception cref="KeyNotFoundException">A number is not in the table.</exception>
    internal static IReadOnlyList<LabelRule> Find(IEnumerable<string> ids)
    {
        var asked = ids.Select(id => ById[id]).ToHashSet();
        return [.. All.Where(asked.Contains)];
    }
}
