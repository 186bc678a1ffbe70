using System.Collections.Frozen;

namespace Materia.Chemistry;

/// <summary>Every method that a computed figure can name.</summary>
public static class Methods
{
    /// <summary>The methods by id.</summary>
    public static FrozenDictionary<string, Method> All { get; } = FrozenDictionary<string, Method>.Empty;
}
