using Materia.Catalogue;

namespace Materia.Chemistry.MethodTexts;

/// <summary>Methods of density.</summary>
internal static class DensityMethods
{
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = DensitySum.Method,
            Name = "Density of a melted blend by adding volumes",
            Equation = "1/ρ = Σ (w_i/ρ_i) / Σ w_i, ρ_i at the temperature [g/mL]",
            Validity = "Melted fats with oils, waxes, essential oils and powders. Each component's density is its own measured one, brought to the temperature with 0.66 kg/m3 for each kelvin; else Lund's relation for melted triglycerides. A figure of a solid fat or wax is divided by 1.09 for its melt (recalled). Powders keep their true density. Below the melting figures the upper end allows for solid fat, 9 % denser. Absent when under 80 % of the mass has a density.",
            Error = "±0.5 % for liquids, ±5 % with powders, or the components' own ranges where they are wider.",
            Sources = ["rodenbush-1999", "recalled"],
        },
        new Method
        {
            Id = "density-lund",
            Name = "Density of a triglyceride oil from its saponification and iodine value",
            Equation = "sg(15/15) = 0.8475 + 3.0e-4 SV + 1.4e-4 IV + 0.057 x; ρ = 999.1 sg − 0.66 (T − 15) [kg/m3], T [Cel], x the mole fraction of hydroxy acids",
            Validity = "Liquid triglycerides from 10 to 110 °C. Not wax esters (jojoba comes out 1.7 % too dense), hydrocarbons, silicones or essential oils. The hydroxyl term was fitted here to castor oil at 10 °C only; the slope 0.66 was chosen here among measured slopes of 0.64 to 0.70.",
            Error = "44 measured points of ten oils: bias −0.13 %, mean deviation 0.16 %, largest 0.40 %.",
            Sources = ["rodenbush-1999", "noureddini-1992-density", "svo-compilation", "ghannam-2023"],
        },
        new Method
        {
            Id = "relative-density",
            Name = "Density from a relative density",
            Equation = "ρ = d ρ_water(T_w)",
            Validity = "Where the water's temperature is not stated, 20 °C is meant; 4 °C is allowed for at the upper end. A figure without the material's own temperature is taken at 15 to 25 °C.",
            Error = "0.01 kg/m3 for the water.",
            Sources = ["tanaka-2001"],
        },
        new Method
        {
            Id = "whipped-density",
            Name = "Density and air of a whipped product",
            Equation = "ρ_whipped = ρ/(1 + OR/100); air = OR/(100 + OR), OR the overrun [%]",
            Validity = "Overrun is measured, mass of a cup before over mass of the same cup after, and given with the formula; it is never predicted.",
            Error = "That of the density and of the overrun measured; the air's own mass is neglected (0.1 %).",
            Sources = ["trade-practice"],
        },
    ];
}
