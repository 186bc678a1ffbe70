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
            Validity = "A well-crystallised blend after days at one temperature, −10 to 80 °C. Fats: triacylglycerols as printed, else generated from the fatty acids with the middle position by a stored ratio or a rule. Classes by the number and place of unsaturated chains; long chains beta, shift −2.0 K, θ 0.30, χ 0.86; lauric fats beta-prime, θ 0.60; alcohols θ 0.60; acids each alone; natural waxes as pseudo-components, θ 0.30; paraffin wax as n-alkanes about the length that melts where the wax does, θ 1. Hydroxy, epoxy, ring and conjugated acids, unsaponifiable matter, jojoba and essential oils count as liquid; powders are left out; microcrystalline wax, ceresin, ozokerite and petrolatum are unknown. Kinetics, tempering, cooling rate and storage are outside the model. Absent when under 80 % of the fat phase has a composition. For comparison and teaching the same equations run with every θ at 0 (pure crystals) or at 1 (ideal solutions in each class); both are worse.",
            Error = "The band joins two independent doubts as the root of the sum of their squares. The model: the curves with every class shifted by −0.7 and +0.7 K and θ by −0.05 and +0.05, at least ±8 points while the firmer curve is not clear. The composition: the curves with every ingredient at the soft and at the firm end of its records. There, saturated acids of 12 carbons and more take the place of the others, or give way to them, until limits are met: the low and high of the acids, those of a standard and of other samples, and the range of the iodine value (of several the narrowest that agrees with the sample), which alone says how far where no acid has a range. Printed triacylglycerols move within their printed ranges, or by the factors by which their generated shares do; unsaponifiable matter goes to its high and its low; a wax's melting shifts over the range stored for it. Ingredients without any range are named in a warning, and the band has only the model's part for them. Measured against printed curves, mostly recalled or of fats whose composition is known by class only, the band holds more than four fifths; the project's table of predicted against printed values gives each, and the mean width. The class parameters were set on recalled curves of three cocoa butters and of palm kernel oil. Temperatures carry ±2 °C at least: most printed slip points and melting ranges lie within that. Rare species are grouped, which moves the curve by under 0.2 points; the edges of the band are solved at adaptive temperatures and interpolated, with an error under half a point or a twentieth of the solid content.",
            Sources = ["wesdorp-1990", "arishima-1991", "mosselman-1974", "crc-enthalpy-fusion", "ons-melting-points", "dassanayake-2009", "breckenridge-1978", "blake-2014", "beeswax-oleogels-2024", "tavernier-2017", "broadhurst-1962", "dirand-2002", "zhang-2011", "meng-2013", "recalled"],
        },
    ];
}
