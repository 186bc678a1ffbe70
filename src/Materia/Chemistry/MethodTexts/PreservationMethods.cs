using Materia.Catalogue;
using Materia.Chemistry.Preserving;

namespace Materia.Chemistry.MethodTexts;

/// <summary>Methods of preservation.</summary>
internal static class PreservationMethods
{
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = FreeWater.MethodKey,
            Name = "Water in a formula",
            Equation = "water = Σ p w / 100 [%]: p the share of a single material, mixtures taken apart, w the water in it [%]",
            Validity = "Water itself, stored or given water contents, and hydrosols, which count as water. Fats, waxes, powders and pure substances count as dry; water that powders take up from air is not free. Extracts, proteins, surfactants and conditioners of which nothing is said may hold any amount, and the formula is then neither with nor without water. Below 0.5 % it counts as free of water. What evaporates in making is not known.",
            Error = "That of the stored contents; the sums are exact.",
            Sources = ["iso-29621-laboratory-page"],
        },
        new Method
        {
            Id = WaterActivity.Method,
            Name = "Water activity of a humectant solution (Norrish)",
            Equation = "a = x_w exp(−(Σ √|K_i| x_i)²): x mole fractions; K −1.16 glycerol, −1.65 sorbitol, −6.47 sucrose [1]",
            Validity = "The water phase of formulas whose dissolved matter is mainly these. Everything else is left out, so that the value is an upper estimate. No safety is claimed from a computed value above 0.70. Least values for growth: 0.95 Pseudomonas and E. coli, 0.91 Salmonella and Lactobacillus, 0.87 Candida, 0.80 most moulds and Staphylococcus aureus, 0.60 none below.",
            Error = "±0.02 for the solutes named; the constants are recalled. 50 % glycerol comes out at 0.81.",
            Sources = ["norrish-1966", "beuchat-1981-table", "recalled"],
        },
        new Method
        {
            Id = FormulaPreservation.Method,
            Name = "Preservation check",
            Equation = "f = 1/(1 + 10^(pH − pKa)), undissociated share; C_w = C (φ + 1)/(K φ + 1), concentration in the water beside oil, φ the volume of oil over that of water, K multiplied by f for an acid",
            Validity = "Low risk where one criterion of ISO 29621 holds: pH below 3 or above 10, ethanol above 20 %, water activity below 0.75, free of water, aluminium chlorohydrate above 25 %, filled above 65 °C. Preservatives are what the market's list names and what the catalogue calls one. Without a pH the shares are shown at 4 to 6. Partition only for parabens, whose constants in soya oil and liquid paraffin were measured; nothing is derived from log P of octanol, since oils differ a hundredfold. Binding by emulsifiers, powders and plastics is not computed.",
            Error = "±0.1 pH shifts the share by up to 6 points; K is good to a factor of two. The ion is taken as idle, which is on the safe side. Only a challenge test proves preservation.",
            Sources = ["iso-29621-laboratory-page", "anderson-chow-1967", "jscc-23-714", "nonionics-preservatives-abstract"],
        },
    ];
}
