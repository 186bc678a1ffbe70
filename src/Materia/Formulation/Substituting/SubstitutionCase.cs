using Materia.Catalogue;
using Materia.Formulation.Optimising;
using Materia.Formulation.OwnMaterials;

namespace Materia.Formulation.Substituting;

/// <summary>A checked request: what is in the formula, what goes out, what may come in, what stays.</summary>
internal sealed record SubstitutionCase
{
    public required Release Release { get; init; }

    public required Formula Submitted { get; init; }

    public required NormalisedFormula Formula { get; init; }

    /// <summary>The materials to do without, the largest share first.</summary>
    public required IReadOnlyList<string> Without { get; init; }

    /// <summary>By line, whether it keeps its share.</summary>
    public required bool[] Locked { get; init; }

    /// <summary>What may come in.</summary>
    public required IReadOnlyList<MaterialColumn> Candidates { get; init; }

    /// <summary>The descriptions of the maker's own materials of the pantry, by name.</summary>
    public required IReadOnlyDictionary<string, OwnMaterial> Own { get; init; }

    public required Exclusion Exclude { get; init; }

    public required int Limit { get; init; }

    public required DateOnly AsOf { get; init; }

    public required IReadOnlyList<string> Notes { get; init; }
}
