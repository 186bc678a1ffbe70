namespace Materia.Tests.Chemistry.Melting;

/// <summary>Rows that the model misses, and why; each is held outside its tolerance, so that a change shows.</summary>
internal static class KnownMisses
{
    private const string MiddleForms =
        "the correlation knows chain lengths and double bonds, not that oleic chains stack three deep: alpha and beta-prime of SUS fats come out too high and too energetic; no computation uses them";

    private const string Heats =
        "the ideal sum of the pure heats; DSC of technical acids gives 10 to 16 % less, and the model has neither a heat of mixing nor impurities";

    private const string Eutectics =
        "free acids are taken as separate pure crystals in an ideal liquid; real ones take up some of each other and melt lower";

    private const string Palm =
        "palm: no diacylglycerols, beta-prime packing or post-hardening, and SUS and S1U2 fats in separate crystals where print has POP and POO in one: too liquid when cold, too solid at 20 to 25 °C";

    public static IReadOnlyDictionary<string, string> ById { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["M015"] = "beta-prime of triolein: the correlation's weakest form, and never used since oleic fats are taken in beta",
        ["M019"] = MiddleForms,
        ["M021"] = MiddleForms,
        ["M024"] = MiddleForms,
        ["M026"] = MiddleForms,
        ["M028"] = "10.2 kJ/mol too much, 0.2 outside: the correlation's heat of SOS is used as it stands",
        ["M029"] = MiddleForms,
        ["M036"] = MiddleForms,
        ["M043"] = "the correlation's heat of tristearin is 3 % low against adiabatic calorimetry",
        ["M074"] = "the collection's 76.0 °C is low against the usual 79.5 to 80.5 °C, which the model holds",
        ["M107"] = "two printed melting points of palmitic acid, 61.8 and 63.85 °C; the model holds the first",
        ["M115"] = Heats,
        ["M117"] = Heats,
        ["M121"] = Heats,
        ["M122"] = Eutectics,
        ["M123"] = Heats,
        ["M125"] = Heats,
        ["M130"] = "the paper's own ideal calculation gives 37.61 °C for its highest ternary, ours 42.7 °C for myristic, palmitic and stearic acid; its heats of fusion and which ternary it is were not seen",
        ["M131"] = "both crystallise in one solid solution of the lauric class, which leaves no eutectic; the printed diagram is kinetic, at 5 K/min",
        ["M155"] = Palm,
        ["M156"] = Palm,
        ["M213"] = "olein: generated from its acids as if it had never been fractionated, so it holds POP and PPP that went into the stearin",
    };
}
