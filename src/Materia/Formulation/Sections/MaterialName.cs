using System.Text.Json.Serialization;

namespace Materia.Formulation.Sections;

/// <summary>Tells a catalogue ingredient from a maker's own material: exactly one of the two members is set.</summary>
public abstract record MaterialName
{
    /// <summary>The id, for an ingredient of the catalogue.</summary>
    [JsonPropertyOrder(-1)]
    public string? Ingredient { get; init; }

    /// <summary>The maker's own name, for a material that came with the formula.</summary>
    [JsonPropertyOrder(-1)]
    public string? Own { get; init; }
}
