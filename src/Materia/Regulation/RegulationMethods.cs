using Materia.Catalogue;
using Materia.Regulation.Allergens;
using Materia.Regulation.Limits;

namespace Materia.Regulation;

/// <summary>The methods by which rules are applied to formulas.</summary>
public static class RegulationMethods
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = LimitFindings.Method,
            Name = "Roll-up of a formula to the substances that rules name",
            Equation = "amount = Σ over materials of p × s × f / 100 [%]: p the material's share of the formula, s the share of the substance in it, f what the rule counts of one part of it, such as 0.8475 for sodium benzoate counted as benzoic acid. Shares of parts of parts are multiplied. For limits that add up as ratios: Σ amount/limit ≤ 1.",
            Validity = "Low, typical and high are rolled up apart, and the high one decides. A material counts under its CAS numbers, its INCI names and its id; a mixture counts as its parts. Where a statement gives no upper end, the substance may fill whatever the other statements of the material leave, unless it is the maker's own lot. Fragrance substances may be in essential oils, extracts, hydrosols and resins without anybody saying so: what their statements leave over counts as not excluded, and a limit that it could break is unknown, never within. Fatty oils, butters and powders are taken to hold none. Verdicts of law, trade standard and opinion stand apart.",
            Error = "The sums are exact decimals; the error is that of the compositions. An analysis of the lot, given as an own material, takes the place of ranges.",
            Sources = ["eu-1223-2009"],
        },
        new Method
        {
            Id = AllergenFindings.Method,
            Name = "Fragrance allergens that a label must name",
            Equation = "declared when Σ p × s / 100 > threshold, over all members of the entry; 0.001 % in products that stay on, 0.01 % in those washed off.",
            Validity = "Members of a group are added first; natural oils that are entries themselves are counted by their own share as well. Strictly above the threshold. The day asked for decides whether an addition to the list is in force.",
            Error = "As for the roll-up.",
            Sources = ["eu-1223-2009"],
        },
    ];
}
