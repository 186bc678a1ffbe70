using Materia.Chemistry;
using Materia.Chemistry.Emulsions;
using Materia.Regulation.Cautioning;
using Materia.Regulation.Declaring;

namespace Materia.Formulation.Sections;

/// <summary>The sections on the product as a whole: its label, whether it keeps, what it is made of, and what to beware of.</summary>
public static class ProductSections
{
    /// <summary>The emulsion.</summary>
    public static EvaluationSection<Emulsion> Emulsion { get; } =
        new("emulsion", "The HLB that the oil phase requires and the emulsifiers offer, the pairs and ratios that would meet it, and where HLB says nothing.", i => FormulaEmulsion.Of(i.Blend));

    /// <summary>Preservation.</summary>
    public static EvaluationSection<ProductPreservation> Preservation { get; } =
        new("preservation", "The water in it, whether it needs a preservative and why, what those present do at its pH, and what is missing.", ProductPreservation.Of);

    /// <summary>The label.</summary>
    public static EvaluationSection<Declaration> Declaration { get; } =
        new("declaration", "A draft of the ingredient list for the market, with the other particulars and the warnings of the label.", i =>
            DeclarationDraft.Of(i.Regulated, i.Of(RegulationSections.Limits), i.Of(RegulationSections.Allergens), i.Explain));

    /// <summary>Natural origin.</summary>
    public static EvaluationSection<NaturalOrigin> NaturalOrigin { get; } =
        new("naturalOrigin", "The natural origin content by ISO 16128, with and without formulation water.", i => Chemistry.NaturalOrigin.Of(i.Blend));

    /// <summary>Cautions.</summary>
    public static EvaluationSection<IReadOnlyList<CautionFinding>> Cautions { get; } =
        new("cautions", "What may hurt whoever makes or uses it: for whom, when, what to do, and where that stands.", i => Materia.Regulation.Cautioning.Cautions.Of(i.Regulated));
}
