using Materia.Catalogue;
using Materia.Regulation.Cautioning;
using Materia.Regulation.Declaring;

namespace Materia.Regulation;

/// <summary>The methods of labels and cautions.</summary>
internal static class LabelMethods
{
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = Declaration.MethodKey,
            Name = "Draft of the ingredient list",
            Equation = "share of a name = Σ p s / 100 [%] over the lines that bring it: p the line's share, s the share of the part in its mixture. Europe: 1 % and more by falling weight, below 1 % in any order, allergens, colourants last. United States: above 1 % by falling weight, 1 % or less in any order, colour additives last.",
            Validity = "Rules EU-ING-01 to -18 and -22, EU-LAB-01 to -15, UK-01, -03, -07, US-ING-01 to -04, -08, -09, US-ALG-01, US-LAB-01 to -03, US-WARN-01, -03, -06, US-SOAP-01. Shares are those at the moment of addition; nothing is assumed lost or taken up. Mixtures are broken up by the typical share of each part and equal names merged. Essential oils and perfumes stand as Parfum (Aroma on lips; Fragrance and Flavor in the United States) in the place of their sum; the alternative names each oil. Allergens come from the section allergens; one that is an ingredient by itself is printed once, a listed natural extract under its group name. (nano) stands only where the material's name has it.",
            Error = "Exact for the shares given. The places of parts of a mixture hang on the supplier's typical shares. American names are recalled or made from the English common name where the catalogue marks none.",
            Sources = LabelRules.Sources,
        },
        new Method
        {
            Id = CautionFinding.MethodKey,
            Name = "Cautions that a formula calls for",
            Equation = "a caution stands where the formula holds what calls for it: a kind of material, a name, a constituent, a share, a type of product",
            Validity = "Melted fats: butters, waxes, fatty alcohols and acids. Drying oils: 15 % and more of acids with 18 carbons and three double bonds, from 5 % of the formula on. Airways and fits: materials with 10 % and more of camphor, menthol or 1,8-cineole. Slipping: more than 5 % of oils in what is washed off. Stains: the same oils in any product, colourants and clays. Flammable: ethanol and its like, and flash points at or below 60 °C. Phototoxic: limits of that kind, or furocoumarins among the constituents, in what may stay on. The records' own cautions stand last. That a caution is missing does not make a product safe.",
            Error = "Each caution carries its own source and grade; several are common practice or recalled.",
            Sources = Cautions.Sources,
        },
    ];
}
