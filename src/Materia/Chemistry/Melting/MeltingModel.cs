using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>
/// How species of one class share a crystal. The crystal forms, their shifts and the crystallinity are those of the recommended
/// model in all three, so that what differs between two answers is the mixing alone.
/// </summary>
[JsonConverter(typeof(KebabCaseEnumConverter<MeltingModel>))]
public enum MeltingModel
{
    /// <summary>Each class is one solid solution with its own mixing weight: the recommended model.</summary>
    ClassSolutions,

    /// <summary>Every species crystallises alone, every mixing weight 0: the eutectic of Schroeder and van Laar.</summary>
    PureCrystals,

    /// <summary>Each class is an ideal solid solution, every mixing weight 1; it gives fats that are much too hard.</summary>
    IdealClasses,
}
