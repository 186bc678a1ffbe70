using Materia.Catalogue;

namespace Materia.Chemistry.MethodTexts;

/// <summary>Methods of heating, cooling and settling.</summary>
internal static class HeatingMethods
{
    /// <summary>The key of the plan's heat.</summary>
    public const string MeltEnergy = "melt-energy";

    /// <summary>The key of cooling.</summary>
    public const string Cooling = "lumped-cooling";

    /// <summary>The key of settling.</summary>
    public const string Settling = "stokes-settling";

    /// <summary>The key of whipping.</summary>
    public const string Whipping = "whipping-window";

    /// <summary>The key of the plan.</summary>
    public const string Plan = "making-plan";

    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = MeltEnergy,
            Name = "Heat to melt a batch, and how long a plate takes",
            Equation = "Q = m [c (T − T0) + f ΔH (S0 − S)/100] + C(vessel) (T − T0) + m(bath) c(water) (T − T0); t = Q/(e P); S solid content [%], f share of the fat phase, ΔH heat of its crystals [J/g], e efficiency of the plate, P power [W]",
            Validity = "A stirred water bath on a plate. Specific heats are those of kinds; the heat of the crystals is that of the melting model. How fast heat gets into a lump is not in it: cut or grate hard materials.",
            Error = "Heat ±15 %, as specific and latent heats spread by that; the time from 0.7 to 2 times, for efficiency and water in the bath are guesses.",
            Sources = ["choi-okos-1986-copy", "recalled", "trade-practice"],
        },
        new Method
        {
            Id = Cooling,
            Name = "Cooling and warming of a batch as one lump",
            Equation = "t = Σ over steps of 1 °C: (m [c + f ΔH ΔS/(100 ΔT)] + C(vessel))/(U A) ln((T0 − Ta)/(T1 − Ta)); Biot number = U (V/A)/k",
            Validity = "Strictly for a Biot number under 0.1. A bowl of fat has 0.3 to 1, so the time is that of its mean temperature; the core lags behind and the wall runs ahead. The vessel is taken as a cylinder. Fats that cool below their melting point before they crystallise (shea, cocoa butter) set later than the curve says.",
            Error = "A factor of 2 either way; no measured cooling curve was found to check it with.",
            Sources = ["cengel-convection-notes", "choi-okos-1986-copy", "recalled"],
        },
        new Method
        {
            Id = Settling,
            Name = "How far powder sinks before the batch sets",
            Equation = "v = (ρp − ρf) g d²/(18 η); distance = v × time until it no longer flows",
            Validity = "Single round grains in a liquid at rest, taken at the warm end of the time, where it is thinnest. Clusters sink faster with the square of their size; crowded grains and plates slower.",
            Error = "Grain sizes are recalled by kind and span a factor of 3 either way, the distance therefore of 10; use the supplier's sieve or laser figure.",
            Sources = ["stokes-soil-example", "recalled"],
        },
        new Method
        {
            Id = Whipping,
            Name = "Temperatures at which a butter takes air",
            Equation = "from T(S = 25 %) to T(S = 10 %), S the solid content of the fat phase; the time on the bench by lumped warming",
            Validity = "The range is that of plastic shortenings at working temperature; it is taken over to whipped butters as common practice. Waxes and fatty alcohols stiffen at less.",
            Error = "Temperatures as the solid-content curve, ±2 °C at least; the time a factor of 2.",
            Sources = ["foodreview-shortening-2017", "mcgee-2004-copy", "trade-practice"],
        },
        new Method
        {
            Id = Plan,
            Name = "Order and temperatures of making",
            Equation = "A line's own phase is kept; else the catalogue's note on its phase; else its kind. Heat to the highest melting figure of what is melted + 5 °C, no higher than the least of what is heated bears. A cool-down addition goes in at or below its stated temperature, never above the least of flash point − 5 °C and the highest temperature that it bears.",
            Validity = "Kitchen and small workshop batches. It is a plan to be tried on a small batch, not a validated procedure.",
            Error = "Common practice throughout, where no figure with a source is named beside it.",
            Sources = ["trade-practice", "recalled", "meng-2013"],
        },
    ];
}
