using System.Collections.Frozen;
using Materia.Formulation.Batches;
using Materia.Formulation.Costs;
using Materia.Formulation.Directing;

namespace Materia.Formulation.Sections;

/// <summary>The table of sections. A new section is a line here, and a file with its result.</summary>
public static class EvaluationSections
{
    /// <summary>All sections, in the order in which an evaluation gives them.</summary>
    public static IReadOnlyList<EvaluationSection> All { get; } =
    [
        FormulaSummary.Section,
        ChemistrySections.FattyAcids,
        ChemistrySections.IodineValue,
        ChemistrySections.SaponificationValue,
        ChemistrySections.Melting,
        FormulaDensity.Section,
        ChemistrySections.Flow,
        ChemistrySections.Oxidation,
        ProductSections.Emulsion,
        ProductSections.Preservation,
        RegulationSections.Limits,
        RegulationSections.Allergens,
        RegulationSections.Gaps,
        ProductSections.Declaration,
        ProductSections.NaturalOrigin,
        BatchPlan.Section,
        ProductCost.Section,
        ProductSections.Cautions,
        Directions.Section,
        CoverageReport.Section,
    ];

    private static readonly FrozenDictionary<string, EvaluationSection> ByName = All.ToFrozenDictionary(s => s.Name, StringComparer.Ordinal);

    /// <summary>The section of this name, or <see langword="null"/>.</summary>
    public static EvaluationSection? Find(string name) => ByName.GetValueOrDefault(name);
}
