using Materia.Catalogue;

namespace Materia.Regulation.Cautioning;

/// <summary>What may hurt whoever uses the product.</summary>
internal static class UsingCautions
{
    /// <summary>The hazard of phototoxic materials.</summary>
    public const string Sunlight = "burns by sunlight";

    private const string User = "whoever uses it";

    private const decimal Slippery = 5;

    private static readonly IngredientKind[] Greasy = [IngredientKind.Oil, IngredientKind.Butter, IngredientKind.Ester, IngredientKind.Hydrocarbon];

    // Camphor, menthol and 1,8-cineole by CAS number, in their natural and racemic forms.
    private static readonly string[] Terpenes = ["76-22-2", "464-49-3", "89-78-1", "2216-51-5", "470-82-6"];

    // Oils in which one of them leads: peppermint, rosemary, eucalyptus, and not lavender with its trace of camphor [%].
    private const decimal MuchTerpene = 10;

    // Furocoumarins burn at a few parts in a million of the product [%].
    private const decimal Trace = 0.0001m;

    private static readonly string[] Furocoumarins = ["484-20-8", "298-81-7"];

    public static IReadOnlyList<CautionRule> All { get; } =
    [
        new("this is no safety assessment", "whoever sells it or gives it away", "before it leaves the house",
            "Have a qualified safety assessor judge the finished formula, notify the product and keep its file as the law of the market asks. Nothing computed here stands in for that.",
            "recalled", "Article 10", Evidence.Memory, _ => []) { CheckIn = "eu-1223-2009" },
        new("irritation and allergy", User, "before first use",
            "Put a pea-sized dab on the inner forearm, leave it as long as the product is meant to stay, and look after 24 and 48 hours. Do not use it where the skin reddens or itches, nor on broken or inflamed skin.",
            "trade-practice", null, Evidence.CommonPractice,
            f => f.OfKinds(IngredientKind.EssentialOil, IngredientKind.Extract, IngredientKind.Resin, IngredientKind.Active, IngredientKind.Preservative, IngredientKind.Surfactant, IngredientKind.Conditioner)),
        new("pregnancy and nursing", "pregnant and nursing women", "in use",
            "Leave out essential oils, or ask a doctor, midwife or pharmacist first.",
            "trade-practice", null, Evidence.CommonPractice, f => f.OfKinds(IngredientKind.EssentialOil)),
        new("essential oils on infants", "children under three years", "in use",
            "Make it without essential oils for them.",
            "trade-practice", null, Evidence.CommonPractice, f => f.OfKinds(IngredientKind.EssentialOil)),
        new("cramp of the airways and fits", "children under thirty months, and those who have had fits", "in use",
            "Do not use it on or near them. Camphor, menthol and 1,8-cineole can stop an infant's breath and set off fits; medicines with such substances for the rectum were barred for this age.",
            "ema-terpenic-2012", "overview of the referral", Evidence.Published, f => f.Lines(p => p.Holds(Terpenes, MuchTerpene))),
        new("honey and infants", "children under one year", "in use near the mouth",
            "Do not use it on lips, nipples or hands that an infant sucks: honey can carry spores of Clostridium botulinum.",
            "trade-practice", null, Evidence.CommonPractice, f => f.Named("HONEY", "MEL")),
        new("eyes", User, "in use near the eyes",
            "Keep it out of the eyes and off the lids, and rinse with plenty of water if it gets in.",
            "trade-practice", null, Evidence.CommonPractice,
            f => f.Use?.Site is null or BodySite.Face or BodySite.Hair
                ? f.OfKinds(IngredientKind.EssentialOil, IngredientKind.Surfactant, IngredientKind.PhAdjuster) : null),
        new(Sunlight, User, "for twelve hours after use, on skin that sees the sun",
            "Keep treated skin out of the sun and of tanning lamps, or use the grade freed of furocoumarins: they burn the skin where light falls on it and leave dark marks.",
            "trade-practice", null, Evidence.CommonPractice,
            f => f.MayStayOn ? f.Lines(p => p.Holds(Furocoumarins, Trace)) : null),
        new("slipping", User, "under the shower and in the bath",
            "Oil on the floor is slippery: use it sitting or on a mat, rinse the floor with soap and hot water, and warn whoever comes next.",
            "trade-practice", null, Evidence.CommonPractice,
            f => f.Use is { Exposure: Exposure.RinseOff } && f.Share(IngredientKind.Oil, IngredientKind.Butter, IngredientKind.Ester, IngredientKind.Hydrocarbon) > Slippery
                ? f.OfKinds(IngredientKind.Oil, IngredientKind.Butter, IngredientKind.Ester, IngredientKind.Hydrocarbon) : null),
        new("stains", User, "until it has sunk in or is washed out",
            "Fat and colour mark pillowcases, collars and towels: use old ones, let it sink in before you dress or lie down, and wash marked cloth hot and soon, with washing-up liquid rubbed in first. Do not tumble-dry cloth that is still oily: it can catch fire.",
            "trade-practice", null, Evidence.CommonPractice,
            f => f.Lines(p => p.Bought.Kind is IngredientKind.Colourant or IngredientKind.Clay
                || (f.Share(Greasy) > Slippery && p.Kind is { } kind && Greasy.Contains(kind)))),
        new("breathing in powder", "whoever uses it, infants and people with asthma above all", "in use",
            "Put it in the hand away from the face; no sprays, and not on infants.",
            "trade-practice", null, Evidence.CommonPractice,
            f => f.Use?.Id.Contains("powder", StringComparison.Ordinal) == true ? f.OfKinds(IngredientKind.Clay, IngredientKind.Powder, IngredientKind.Starch) : null),
    ];
}
