using Materia.Catalogue;
using Materia.Formulation.Batches;
using Materia.Formulation.Costs;
using Materia.Formulation.Directing;

namespace Materia.Formulation;

/// <summary>The methods of batches, costs and directions.</summary>
public static class FormulationMethods
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = BatchPlan.MethodKey,
            Name = "Weights of a batch by largest remainders",
            Equation = "N = mass / step of the scale; each line gets the whole steps of p N / 100, and the steps left over go to the largest remainders, ties to the larger share, then to the earlier line. Mass from a volume: V ρ; from jars: n V (1 − h/100) ρ / (1 − loss/100), or n m / (1 − loss/100). ρ is that of the whipped product where an overrun is given.",
            Validity = "Exact decimals; the weights add up to the batch to the scale's last digit, and no line is a whole step off. A batch given by volume or jars is rounded up to the scale, a mass to the nearest step. Limits are worked out anew on the shares that the weights have. Ten steps of the scale for each line, a headspace of 5 % and the premixes are common practice. 1 oz is the avoirdupois ounce, 28.349523125 g.",
            Error = "None for weights. Volumes and jars by volume carry the error of the density: about ±1 % for liquids, more for fats that set, powders and air.",
            Sources = ["trade-practice"],
        },
        new Method
        {
            Id = ProductCost.MethodKey,
            Name = "Cost of materials",
            Equation = "cost = Σ m_i c_i, c_i = price / mass, or price / (volume × density at 20 °C); one jar: cost of the batch × mass in the jar / (mass weighed in × (1 − loss/100)) + packaging",
            Validity = "By the weights rounded to the scale where there is a batch, by the percentages for 100 g. Prices as sent, in one currency; lines without one are not counted and said. Work, energy, tax and carriage are left out. Sums are exact; each amount shown is rounded to the currency's smallest unit, halves to the even one. The currency codes are those of Debian's iso-codes; the numbers of decimals other than two were recalled.",
            Error = "None for prices per mass; the range of the density for prices per volume.",
            Sources = ["trade-practice", "recalled"],
        },
        new Method
        {
            Id = Directions.MethodKey,
            Name = "Directions by use",
            Equation = "the sentences of the use, and those that the formula calls for: by its melting, clay, fats without emulsifier, essential oils, oxidation band, water and preservation",
            Validity = "A draft for products of the uses in the catalogue. Cautions are those of the section cautions that concern whoever uses the product. No number of months is given: what a composition tells is in oxidation and preservation.",
            Error = "Common practice throughout; nothing of it was measured on this formula.",
            Sources = ["trade-practice"],
        },
    ];
}
