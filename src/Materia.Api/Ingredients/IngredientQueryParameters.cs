using System.Text.Json.Nodes;
using Materia.Api.Http;
using Materia.Catalogue;
using Materia.Search;

namespace Materia.Api.Ingredients;

/// <summary>The query parameters of an ingredient search.</summary>
public static class IngredientQueryParameters
{
    /// <summary>How many hits a page has when nothing is asked.</summary>
    public const int UsualLimit = 20;

    private const string RangeForm = " Written low..high, either end open.";

    /// <summary>All of them.</summary>
    public static QueryParameter[] All { get; } =
    [
        new("text", "Words of any name in any language (INCI, common, botanical, synonym), or a CAS or EC number with or without hyphens. Accents and case do not matter, typing errors are forgiven, and the last word may be unfinished.") { Example = "shea" },
        new("kind", "Kinds of material, one of which it must be.") { Repeatable = true, Words = KebabCase<IngredientKind>.Words, Example = new JsonArray("butter", "oil") },
        new("function", "Functions in the official inventory's terms in kebab case, one of which it must have; the facets list those there are.") { Repeatable = true, Example = new JsonArray("skin-conditioning") },
        new("origin", "Kingdoms, one of which it must come from.") { Repeatable = true, Words = KebabCase<OriginKind>.Words, Example = new JsonArray("plant") },
        new("charge", "Charges in water, one of which it must carry.") { Repeatable = true, Words = KebabCase<IonicCharge>.Words, Example = new JsonArray("nonionic") },
        new("group", "Keys of substitution groups, of one of which it must be a member; GET /v1/substitution-groups lists them.") { Repeatable = true, Example = new JsonArray("clay-mask") },
        .. PropertyGroups.All.Select(group => new QueryParameter(group.Name(), Description(group) + RangeForm) { Example = Example(group) }),
        new("acid", "The share of a fatty acid or alcohol [%], written symbol:low..high; 18:1n-9:40.. asks for 40 % oleic acid or more. A symbol without a position, such as 18:1, asks for the sum of its isomers. May stand several times; all must hold.") { Repeatable = true, Example = new JsonArray("18:1n-9:40..") },
        new("rangeMatch", "When a stored range answers a range asked for: overlap (the usual) when they have a value in common, within when the stored one lies inside.") { Words = KebabCase<RangeMatch>.Words, Example = "within" },
        new("sort", "The order of the hits, a minus for the greatest first. Without it by relevance, which without text is by name. solidAt20, solidAt32 and clearPoint are computed figures. Hits without the figure come last.") { Words = SearchSort.Words, Example = "melting" },
        new("limit", "How many hits a page has.") { Value = QueryValue.Whole, Least = 1, Greatest = SearchRequest.GreatestLimit, Example = UsualLimit },
        new("after", "The cursor of the next page, as next gave it. It holds for the same request within one release."),
    ];

    private static string Description(PropertyGroup group) => group switch
    {
        PropertyGroup.Melting => "Where it melts [Cel]: melting range, slip melting point, melting point, clear point or drop point.",
        PropertyGroup.Iodine => "Iodine value [g/(100.g)].",
        PropertyGroup.Saponification => "Saponification value [mg/g].",
        PropertyGroup.Density => "Density near 20 Cel [g/mL].",
        PropertyGroup.Viscosity => "Viscosity near 20 Cel [mPa.s].",
        PropertyGroup.RequiredHlb => "HLB that an oil-in-water emulsion of it requires.",
        PropertyGroup.Comedogenic => "Grades of the rabbit-ear assay, 0 to 5; they do not predict a finished product.",
        PropertyGroup.SolidAt20 => "Solid content at 20 Cel [%], computed from the composition, not measured: that of the well-crystallised ingredient. One whose melting cannot be computed is not found.",
        PropertyGroup.SolidAt32 => "Solid content at 32 Cel, the temperature of skin [%], computed as solidAt20 is.",
        PropertyGroup.ClearPoint => "Where it is clear [Cel], computed as solidAt20 is; measured clear points are among melting.",
        PropertyGroup.Hlb => "HLB of an emulsifier.",
        PropertyGroup.CationExchangeCapacity => "Cation-exchange capacity [cmol/kg].",
        PropertyGroup.Swelling => "Volume that 2 g take up after swelling in water [mL].",
        PropertyGroup.ShelfLife => "Shelf life unopened [mo].",
        PropertyGroup.EffectivePh => "pH in which it works or keeps.",
        PropertyGroup.MolarMass => "Molar mass [g/mol].",
        PropertyGroup.FlashPoint => "Flash point [Cel].",
        _ => throw new ArgumentOutOfRangeException(nameof(group), group, "A property group without a description."),
    };

    private static string Example(PropertyGroup group) => group switch
    {
        PropertyGroup.Melting => "28..36",
        PropertyGroup.Iodine => "50..80",
        PropertyGroup.Saponification => "180..200",
        PropertyGroup.Density => "0.9..0.95",
        PropertyGroup.Viscosity => "..80",
        PropertyGroup.RequiredHlb => "5..9",
        PropertyGroup.SolidAt20 => "40..",
        PropertyGroup.SolidAt32 => "..5",
        PropertyGroup.ClearPoint => "30..40",
        PropertyGroup.Hlb => "10..12",
        PropertyGroup.CationExchangeCapacity => "..20",
        PropertyGroup.Swelling => "..8",
        PropertyGroup.ShelfLife => "12..",
        PropertyGroup.EffectivePh => "5..6",
        PropertyGroup.MolarMass => "..200",
        PropertyGroup.FlashPoint => "60..",
        _ => "..2",
    };
}
