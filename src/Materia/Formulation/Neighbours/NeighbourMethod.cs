using Materia.Catalogue;

namespace Materia.Formulation.Neighbours;

/// <summary>The method by which neighbours are ranked.</summary>
internal static class NeighbourMethod
{
    public static Method Text { get; } = new()
    {
        Id = NeighbourSearch.Method,
        Name = "Distance of two ingredients in steps that a maker notices",
        Equation = "rank by d + g. d = √(Σ w s²/Σ w) over the properties of the asked kind: s = |x − y|/step, or |ln(x/y)|/ln(factor), at most 8; s = 3 where either has no figure. "
            + "Steps of fats: solid content at 10, 20, 25, 32 and 40 °C 8 % (w 0.6 each), melting 5 °C, viscosity at 32 °C a factor of 1.5, iodine value 15, saponification value 15 (0.5), saturated, monounsaturated and polyunsaturated acids 10 %, density 0.03 g/mL (0.5). "
            + "Emulsifiers: HLB 1.5 (2), melting 5 °C, molar mass a factor of 2 (0.5). Clays: exchange capacity 15 cmol/kg (1.5), swelling 4 mL (1.5), water absorption 40, oil absorption 15, pH 1. Powders: oil absorption 15, water absorption 40, density 0.4, pH 1. "
            + "Preservatives: both ends of the pH they work in 1, upper usual share a factor of 3 (0.5), log P 1 (0.5), solubility a factor of 5 (0.5). Essential oils: half the sum of the absolute differences of constituents 12 % (4), density 0.03 (0.5), flash point 15 °C (0.25). Others: active content 20 %, molar mass, pH, its ends of use, HLB, solubility, density 0.1 (0.5). Another charge counts 4 steps (2). "
            + "g, what they are for: the share of the asked one's substitution groups that the other is not in (1), or 2 without a common group; 0.75 for another kind; 0.5 times the share of functions that they do not have in common.",
        Validity = "Candidates share a substitution group, the kind, or three functions. Steps and weights are common practice, set before the ranks were looked at, and do not move with the catalogue. A figure that either side lacks counts as a clear difference and never as agreement; coverage tells the weight of what was compared. Solid contents are computed, not measured.",
        Error = "No measure of likeness has a true value to be held against; known swaps of the trade are kept as tests.",
        Sources = ["trade-practice"],
    };
}
