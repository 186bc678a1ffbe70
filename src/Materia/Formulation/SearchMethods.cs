using Materia.Catalogue;
using Materia.Formulation.Neighbours;
using Materia.Formulation.Substituting;

namespace Materia.Formulation;

/// <summary>The methods by which formulas are compared and searched.</summary>
public static class SearchMethods
{
    /// <summary>The key of the method of the search.</summary>
    public const string Search = "successive-linear-programmes";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Method> All { get; } =
    [
        NeighbourMethod.Text,
        new Method
        {
            Id = SubstitutionFinder.Method,
            Name = "Distance of two formulas in noticeable steps",
            Equation = "d = Σ w |y − y0|/s / Σ w over the figures that the original has, or over what lies outside the targets of a design. Steps s: solid content 5 % at 10, 20, 25, 32 and 40 °C; clear point 2 °C; viscosity at 32 and 60 °C a factor of 1.2 (compared as logarithms); density 0.02 g/mL; iodine value 10 g/(100.g); saponification value 10 mg/g; oxidisability 0.5; saturated, monounsaturated, polyunsaturated and single fatty acids 5 %; required HLB and HLB 1; oil absorption 10 and water absorption 25 g/(100.g), cation-exchange capacity 10 cmol/kg, swelling volume 3 mL (means by mass of the powders or clays); cost a twentieth of the target. Weights w: 1 for what is felt, 0.5 for composition and density, the given weight in a design.",
            Validity = "1 means that the figures differ on average by what a user is likely to notice. A figure that the original has and the proposal has not counts as two steps; each twentieth of the mass concerned whose figure is lost counts as one more, so that a gap never passes for agreement. Viscosity is compared only where the original is melted. Scent, colour, slip and skin feel beyond these figures are not in it.",
            Error = "The steps are common practice, not measured thresholds; the figures carry the errors of their own methods.",
            Sources = ["trade-practice"],
        },
        new Method
        {
            Id = Search,
            Name = "Search of formulas by successive linear programmes",
            Equation = "At each blend the figures are taken to be linear in the shares (forward differences of 0.25 points with the true melting model), the programme min Σ cost·outside subject to Σ change = 0, bounds on shares, kinds and steps is solved by the simplex method, and the step is kept when the true figures are better; the radius follows how well the linear model foretold it. The result is rounded to 0.1 % (largest remainders), tenths are moved between lines as long as that helps, and the rounded formula is what is reported and held against every limit.",
            Validity = "Kept fats may move to between half and one and a half of their share, or up by what went out; what is locked, and everything that is no fat, keeps its share. Another grade of what is missing or stays (the same INCI name) comes in from a pantry only. Where the trade gives a swap ratio under 1, no more than 1.25 times the ratio comes in. Moving a kept line costs 0.003 a point, passing the usual share of an ingredient 0.4 for each time itself, having no use in common 0.02: they decide between formulas that figures hardly tell apart, and are no part of the distance. The work is fixed, so the same request gives the same answer unless the time budget cuts it, which cut says.",
            Error = "A local search from many starts: the best formula of all is likely, not certain. Small cases are held to 1 % of an exhaustive grid of 0.5 %.",
            Sources = ["trade-practice"],
        },
    ];
}
