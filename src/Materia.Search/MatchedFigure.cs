using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Search;

/// <summary>A stored or computed figure that satisfied a range.</summary>
public sealed record MatchedFigure
{
    /// <summary>The range that it satisfied.</summary>
    public required PropertyGroup Group { get; init; }

    /// <summary>
    /// The property; <see langword="null"/> for a comedogenic grade and for a computed figure. A relative density is shown as the density that it comes to.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Property? Property { get; init; }

    /// <summary>The lower end, where one is known.</summary>
    public decimal? Low { get; init; }

    /// <summary>The upper end, where one is known.</summary>
    public decimal? High { get; init; }

    /// <summary>The UCUM code of the unit.</summary>
    public required string Unit { get; init; }

    /// <summary>The temperature of the material [Cel], where the property depends on it and it is stated.</summary>
    public decimal? Temperature { get; init; }

    /// <summary>True for a figure that was computed from the record rather than measured; absent otherwise.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool Computed => Method is not null;

    /// <summary>The key of the method of a computed figure, see <c>GET /v1/methods</c>; absent for a stored one.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Method { get; init; }
}
