using Materia.Catalogue;

namespace Materia.Chemistry.MethodTexts;

/// <summary>Methods of oxidation.</summary>
internal static class OxidationMethods
{
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = OxidationSum.CoxMethod,
            Name = "Oxidisability of the fatty acids (Cox value)",
            Equation = "Cox = (1 mono + 10.3 di + 21.6 tri)/100, shares of all fatty acids [%]; of a blend: Σ weight × Cox_i, weight the share of its fatty acids",
            Validity = "An index for comparing fats. Ricinoleic and other acids with one double bond count as mono; acids with four or more as tri. Bands: below 1.5 slow, to 4 moderate, to 8 fast, above very fast; the edges are this library's own. It says nothing of antioxidants, metals, peroxides and refining.",
            Error = "Exact as an index. Against the measured stability of seven oils it explains about half of the spread, the rest scattering by a factor of 2.2. The rates are recalled; the paper was not reached.",
            Sources = ["fatemi-hammond-1980", "osi-emollients-table"],
        },
        new Method
        {
            Id = OxidationSum.PeroxidizabilityMethod,
            Name = "Peroxidizability index",
            Equation = "PI = 0.025 mono + 1 di + 2 tri + 4 tetra + 6 penta + 8 hexa, shares of all fatty acids [%]",
            Validity = "Given only where acids with four or more double bonds occur, as in algal and marine oils.",
            Error = "Exact as an index. The weights are recalled; the paper was not reached.",
            Sources = ["cosgrove-1987"],
        },
        new Method
        {
            Id = OxidationSum.RateMethod,
            Name = "Oxidation at 30 °C against 20 °C",
            Equation = "rate(30 °C)/rate(20 °C) = Q10, 2 to 3",
            Validity = "Fats in the dark. Activation energies of 79 to 104 kJ/mol (ten oils, 110 to 140 °C) and below 50 kJ/mol (10 to 30 °C, in light) carried from 110 to 20 °C span a factor of 180: no number of months is given.",
            Error = "The range is the result; the value is its middle.",
            Sources = ["frankel-2005", "tan-2001", "manzocco-2012"],
        },
        new Method
        {
            Id = TocopherolSum.Method,
            Name = "Tocopherols that the ingredients promise",
            Equation = "t = Σ w t_i / Σ w over the lipid phase [mg/kg], ingredients without a figure counting as none",
            Validity = "The least that can be expected of fresh ingredients; the upper end is open while any ingredient lacks a figure. Studies disagree on the best amount: 100 alpha, 250 gamma, 500 delta with more promoting oxidation (stripped soybean oil, 55 °C); no such effect up to 2000 (purified sunflower fat); alpha better below 400 to 700, gamma above (100 °C).",
            Error = "That of the stored figures, which vary by a factor of two and more between lots and fall with refining and age.",
            Sources = ["jung-min-1990", "fuster-1998", "yanishlieva-2002"],
        },
    ];
}
