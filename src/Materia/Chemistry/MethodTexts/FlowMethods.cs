using Materia.Catalogue;

namespace Materia.Chemistry.MethodTexts;

/// <summary>Methods of viscosity.</summary>
internal static class FlowMethods
{
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = FlowSum.Method,
            Name = "Viscosity of a melted blend",
            Equation = "ln ν = Σ φ ln ν_i over volume fractions φ; η = ν ρ; with powders η times (1 − φ_s/φ_m)⁻² [mPa.s]",
            Validity = "Miscible liquids, all fats melted: no figure is given below the highest melting figure of the ingredients. Each liquid's viscosity is a maker's own figure, else its own coefficients, else its fatty acids, else a stored figure. Waxes, fatty alcohols and essential oils have no viscosity model; what they make up is missing from the coverage. Absent when under 80 % of the mass has data.",
            Error = "±15 % for each oil, joined as squares with ±10 % for mixing triglycerides, ±20 % where viscosities lie more than fivefold apart, ±30 % with hydrocarbons; the bounds of the ingredients' limits come on top. The mixing rule could not be tested here on measured binary blends; a published study finds blending charts of this form within 5 %.",
            Sources = ["erhan-2002", "astm-d341", "svo-compilation"],
        },
        new Method
        {
            Id = "viscosity-oil-coefficients",
            Name = "Viscosity of a named oil",
            Equation = "W = A − B log₁₀(T/313.15), W = log₁₀ log₁₀(ν + 0.7), T [K], ν [mm2/s]",
            Validity = "Inside the temperatures measured: castor 20 to 99 °C, olive, sweet almond, palm kernel, sunflower, flaxseed and hempseed 38 to 99 °C, coconut 38 to 110 °C, soybean 0 to 40 °C, cottonseed 0 to 60 °C, peanut 10 to 40 °C, canola 4 to 40 °C, crambe 24 to 110 °C, jojoba 40 to 100 °C (recalled); elsewhere the composition model, save for jojoba, which has none. A and B were fitted here.",
            Error = "Fits of four and more points: 0.6 to 2.4 % mean. Two-point fits come from whole numbers, so that B is known to ±0.15. Samples of one oil differ by 15 %, which is what is shown.",
            Sources = ["astm-d341", "svo-compilation", "rescorla-1936", "magne-1945", "noureddini-1992-viscosity", "recalled"],
        },
        new Method
        {
            Id = "viscosity-oil-composition",
            Name = "Viscosity of a triglyceride oil from its fatty acids",
            Equation = "W = 0.24400 + 0.01350 (C − 18) − 0.03910 D + 0.19676 H − u (1.27023 + 0.25612 H − 0.02385 (C − 18)), u = ln(T/313.15), C, D and H the carbons, double bonds and hydroxyls of a chain, means by moles",
            Validity = "Liquid, 0 to 110 °C, C 12.5 to 21.5, D 0.1 to 2.1, H 0 or about 0.9 (not between: mix castor by the mixing rule). A little outside, C 12 to 22 and D up to 2.6, it is given ±25 %. Not for conjugated or epoxy acids. The coefficients were fitted here by weighted least squares on 65 points of six publications.",
            Error = "Fitted points: mean 4.4 %, largest 13.5 %. 40 points that were not fitted: mean 5.5 %, bias −3.4 %, largest 15 %. Heated and old oils are thicker.",
            Sources = ["astm-d341", "svo-compilation", "ryan-1984", "goering-1982", "peterson-1983", "noureddini-1992-viscosity", "magne-1945", "rescorla-1936"],
        },
        new Method
        {
            Id = "viscosity-one-point",
            Name = "Viscosity from one measurement",
            Equation = "W(T) = W(T_ref) − 3.1 log₁₀(T/T_ref)",
            Validity = "Liquids of which one viscosity with its temperature is stored and nothing better is known: esters, squalane. The slope is the middle of those found here for oils.",
            Error = "The stored range, a slope of 2.6 to 3.6, and ±5 % for the lot, an allowance of this library's own.",
            Sources = ["astm-d341", "recalled"],
        },
        new Method
        {
            Id = "suspension-maron-pierce",
            Name = "Thickening by suspended powders",
            Equation = "η_r = (1 − φ/φ_m)⁻²; φ the powders' volume fraction from true densities; φ_m = 1/(1 + OA ρ_s/(100 ρ_o)), OA the oil absorption [g/(100.g)], else 0.45; several powders: 1/φ_m = Σ (φ_i/φ_m,i)/Σ φ_i",
            Validity = "Particles that do not dissolve or swell. Refused above 0.9 φ_m. Above 0.6 φ_m it thins under shear, above 0.8 φ_m it has a yield stress. The relation of packing and oil absorption is recalled.",
            Error = "A factor of 1.5 at best, as clays flocculate in oil; never below 1 + 2.5 φ, that of dilute spheres.",
            Sources = ["mueller-2010", "einstein-1906", "astm-d281", "recalled"],
        },
    ];
}
