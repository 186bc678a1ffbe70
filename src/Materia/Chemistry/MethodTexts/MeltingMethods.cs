using Materia.Catalogue;
using Materia.Chemistry.Melting;

namespace Materia.Chemistry.MethodTexts;

/// <summary>Methods of melting.</summary>
internal static class MeltingMethods
{
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = MeltingSum.Method,
            Name = "Solid content of a blend of fats, waxes, alcohols and acids",
            Equation = "ln K = (ΔH/R)(1/T − 1/(Tm + shift)); in each class of species that crystallise together x_solid = (K x_liquid)^(1/θ) with Σ x_solid = 1; classes do not dissolve in each other's crystals; the liquid is ideal; solid content = Σ χ s M / Σ z M [%]",
            Validity = "A well-crystallised blend after days at one temperature, −10 to 80 °C. Fats: triacylglycerols as printed, else generated from the fatty acids with the middle position by a stored ratio or a rule. Classes by the number and place of unsaturated chains; long chains beta, shift −2.0 K, θ 0.30, χ 0.86; lauric fats beta-prime, θ 0.60; alcohols θ 0.60; acids each alone; natural waxes as pseudo-components, θ 0.30. Hydroxy, epoxy, ring and conjugated acids, unsaponifiable matter, jojoba and essential oils count as liquid; powders are left out. Kinetics, tempering, cooling rate and storage are outside the model. Absent when under 80 % of the fat phase has a composition. For comparison and teaching the same equations run with every θ at 0 (pure crystals) or at 1 (ideal solutions in each class); both are worse.",
            Error = "The band is the pair of curves with every class shifted by −0.7 and +0.7 K and θ by −0.05 and +0.05, at least ±8 points while the firmer curve is not clear: about ±10 points on a steep stretch of an untested fat. The ±8 were set on refinery curves of fats whose composition is known by class only; they hold 70 % of those. The class parameters were set on recalled curves of three cocoa butters and of palm kernel oil, so errors against other fats are errors against mostly recalled curves; the project's table of predicted against printed values gives them one by one. Temperatures carry ±2 °C at least: 17 of 19 printed slip points and melting ranges lie within that. Rare species are grouped, which moves the curve by under 0.2 points.",
            Sources = ["wesdorp-1990", "arishima-1991", "mosselman-1974", "crc-enthalpy-fusion", "ons-melting-points", "dassanayake-2009", "breckenridge-1978", "blake-2014", "beeswax-oleogels-2024", "meng-2013", "recalled"],
        },
    ];
}
