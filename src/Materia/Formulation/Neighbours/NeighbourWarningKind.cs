using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Formulation.Neighbours;

/// <summary>Sorts of warning beside a neighbour.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<NeighbourWarningKind>))]
public enum NeighbourWarningKind
{
    /// <summary>It comes from a raw material that people with an allergy look for.</summary>
    AllergenFamily,

    /// <summary>It is of the same family of plants as the ingredient asked for, so that whoever reacts to one may react to the other.</summary>
    BotanicalFamily,

    /// <summary>A grade of the rabbit-ear assay, with its caveat.</summary>
    Comedogenic,

    /// <summary>A limit of law, trade standard or opinion names it or what it holds.</summary>
    Limit,

    /// <summary>A limit against burns by sunlight names it or what it holds.</summary>
    Phototoxic,

    /// <summary>Its usual share ends below that of the ingredient asked for.</summary>
    UsageLevel,
}
