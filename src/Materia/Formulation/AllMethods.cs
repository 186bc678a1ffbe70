using System.Collections.Frozen;
using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Regulation;

namespace Materia.Formulation;

/// <summary>Every method that a result can name, of chemistry, of rules and of making.</summary>
public static class AllMethods
{
    /// <summary>The methods by id.</summary>
    public static FrozenDictionary<string, Method> ById { get; } =
        Methods.All.Values.Concat(RegulationMethods.All).Concat(FormulationMethods.All).Concat(SearchMethods.All).ToFrozenDictionary(m => m.Id, StringComparer.Ordinal);
}
