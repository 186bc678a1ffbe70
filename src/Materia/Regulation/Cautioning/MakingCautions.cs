using Materia.Catalogue;

namespace Materia.Regulation.Cautioning;

/// <summary>What may hurt whoever makes the product.</summary>
internal static class MakingCautions
{
    /// <summary>The hazard of hot fat.</summary>
    public const string HotFat = "burns by hot fat";

    /// <summary>The hazard of steam.</summary>
    public const string Steam = "spatter of steam";

    /// <summary>The hazard of dust with quartz.</summary>
    public const string QuartzDust = "dust with respirable quartz";

    /// <summary>The hazard of other dust.</summary>
    public const string Dust = "dust";

    /// <summary>The hazard of talc.</summary>
    public const string TalcDust = "talc dust";

    /// <summary>The hazard of alkali.</summary>
    public const string StrongAlkali = "burns by strong alkali";

    /// <summary>The hazard of acid.</summary>
    public const string StrongAcid = "burns by strong acid";

    /// <summary>The hazard of fire.</summary>
    public const string Fire = "fire";

    /// <summary>The hazard of oily rags.</summary>
    public const string OilyRags = "rags that heat themselves";

    /// <summary>The hazard of essential oils as they are.</summary>
    public const string UndilutedOils = "undiluted essential oils";

    private const string Maker = "whoever makes it, and children and animals near by";

    // Oils with this much alpha-linolenic acid dry in air, and give off heat as they do.
    private const decimal DryingShare = 15;

    private const decimal WorthSaying = 5;

    private static readonly string[] Alkalis = ["SODIUM HYDROXIDE", "POTASSIUM HYDROXIDE", "CALCIUM HYDROXIDE", "AMMONIUM HYDROXIDE"];
    private static readonly string[] Acids = ["PHOSPHORIC ACID", "GLYCOLIC ACID", "LACTIC ACID", "ACETIC ACID"];
    private static readonly string[] Silicas = ["SILICA", "DIATOMACEOUS EARTH", "SOLUM DIATOMEAE", "PUMICE", "QUARTZ"];

    public static IReadOnlyList<CautionRule> All { get; } =
    [
        new(HotFat, Maker, "melting and pouring",
            "Melt in a water bath, not on the plate; wear gloves, long sleeves and glasses; never leave it alone. Fat clings and holds its heat: at 100 °C about ten seconds are enough for a deep burn, and fat gets hotter than that. Cool a burn with running water at once.",
            "burn-time-review", "abstract", Evidence.Published, f => f.OfKinds(IngredientKind.Butter, IngredientKind.Wax, IngredientKind.FattyAlcohol, IngredientKind.FattyAcid)),
        new(Steam, Maker, "putting water and hot fat together",
            "Bring both phases below 80 °C before they meet. Water that meets fat above 100 °C turns to steam at once and throws it about.",
            "recalled", null, Evidence.Memory, f => f.Parts.Any(p => p.Part.IsWater) ? f.OfKinds(IngredientKind.Butter, IngredientKind.Wax, IngredientKind.FattyAlcohol, IngredientKind.FattyAcid) : null),
        new(QuartzDust, Maker, "weighing and stirring in dry clay and mineral powder",
            "Weigh slowly, low in the beaker, without draught, and wear a dust mask (FFP2 or better); wipe up wet. What is dug from the ground can hold quartz, whose fine dust harms the lungs for good: ask the supplier for the quartz content. The recommended limit at work is 0.05 mg/m³.",
            "niosh-nmam-r", "Table 2", Evidence.Published, f => f.Lines(p => p.Bought.Kind == IngredientKind.Clay || Silicas.Contains(p.Inci, StringComparer.Ordinal))),
        new(Dust, Maker, "weighing and stirring in fine powders",
            "Keep the dust down, wear a mask, and keep flour-like powders away from flames: a cloud of them can flash.",
            "recalled", null, Evidence.Memory, f => f.Lines(p => p.Bought.Kind is IngredientKind.Powder or IngredientKind.Starch or IngredientKind.Colourant && !Silicas.Contains(p.Inci, StringComparer.Ordinal))),
        new(TalcDust, "whoever makes or uses it; children above all", "weighing, stirring and dusting",
            "Do not breathe it in and keep it away from children's nose and mouth. Ask the supplier for proof that it is free of asbestos; a working group classed talc as probably carcinogenic in 2024.",
            "recalled", null, Evidence.Memory, f => f.Named("TALC")) { CheckIn = "iarc-136" },
        new(StrongAlkali, Maker, "weighing and dissolving",
            "Wear tight goggles and gloves. Stir the alkali into cold water, never water into the alkali; have running water within reach. It can cause blindness. Keep it locked away from children.",
            "eu-annexes-export", "Annex III, entry 15a, mandatory words", Evidence.Published, f => f.Named(Alkalis)),
        new(StrongAcid, Maker, "weighing and dissolving",
            "Wear goggles and gloves, add the acid to the water and not the other way, and measure the pH of the product before it touches skin.",
            "recalled", null, Evidence.Memory, f => f.Named(Acids)),
        new(Fire, Maker, "weighing, heating and stirring in",
            "Keep it away from flames, hot plates and sparks, stir it in at the end below its flash point, and air the room.",
            "trade-practice", null, Evidence.CommonPractice, f => f.Lines(IsFlammable)),
        new(OilyRags, Maker, "after making",
            "Spread cloths and paper with this oil out flat to dry in the open, or soak them in water in a closed tin. In a heap they heat up as the oil takes up oxygen and can catch fire by themselves.",
            "recalled", null, Evidence.Memory, f => f.Lines(p => p.Percent >= WorthSaying && IsDrying(p))),
        new(UndilutedOils, Maker, "weighing and stirring in",
            "Wear gloves; do not let them touch skin, eyes or mouth undiluted; wash off with fat and soap, not with water alone. Keep the bottles locked away from children: a few millilitres swallowed can poison a child.",
            "trade-practice", null, Evidence.CommonPractice, f => f.OfKinds(IngredientKind.EssentialOil)),
    ];

    private static bool IsFlammable(CautionedPart part) =>
        part.Inci is "ALCOHOL" or "ALCOHOL DENAT." or "ISOPROPYL ALCOHOL" or "ETHYL ACETATE" or "ISODODECANE"
        || part.Ingredient?.Properties.Any(f => f.Property == Property.FlashPoint && f.Least() <= FlashPointOfFlammableLiquids) == true;

    // The upper flash point of liquids that are labelled as flammable [Cel].
    private const decimal FlashPointOfFlammableLiquids = 60;

    private static bool IsDrying(CautionedPart part) =>
        part.Ingredient is { } oil && oil.FattyAcidProfiles.Where(p => p is { Kind: ProfileKind.Sample, Of: ProfilePart.Acids })
            .Any(p => p.Shares.Where(s => s.Acid.StartsWith("18:3", StringComparison.Ordinal)).Sum(s => s.Typical ?? s.Low ?? 0) >= DryingShare);
}
