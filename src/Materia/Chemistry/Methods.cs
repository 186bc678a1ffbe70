using System.Collections.Frozen;
using Materia.Catalogue;
using Materia.Chemistry.MethodTexts;

namespace Materia.Chemistry;

/// <summary>Every method that a computed figure can name, with what a reader needs to judge it.</summary>
public static class Methods
{
    /// <summary>The methods by id.</summary>
    public static FrozenDictionary<string, Method> All { get; } =
        new[] { CompositionMethods.All, TitrationMethods.All, DensityMethods.All, MeltingMethods.All, FlowMethods.All, OxidationMethods.All, PreservationMethods.All, EmulsionMethods.All, HeatingMethods.All }
            .SelectMany(m => m)
            .ToFrozenDictionary(m => m.Id, StringComparer.Ordinal);
}
