using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Formulation.OwnMaterials;

/// <summary>
/// A raw material described by the maker: one that the catalogue lacks, or one lot with its certificate. Beside these members it
/// takes every property of the catalogue by its name in camel case, such as <c>density</c> or <c>iodineValue</c>.
/// </summary>
public sealed record OwnMaterial
{
    /// <summary>What the maker calls it, at most 200 characters; results use it where an ingredient's id would stand.</summary>
    public string? Name { get; init; }

    /// <summary>The INCI name, for the label.</summary>
    public string? InciName { get; init; }

    /// <summary>What kind of material it is.</summary>
    public IngredientKind? Kind { get; init; }

    /// <summary>The fatty acids, in percent by mass of all fatty acids; the shares add up to 97 to 100.5.</summary>
    public IReadOnlyList<OwnFattyAcid> FattyAcids { get; init; } = [];

    /// <summary>Named constituents, in percent by mass.</summary>
    public IReadOnlyList<OwnConstituent> Constituents { get; init; } = [];

    /// <summary>The materials that a ready-made mixture consists of, in place of any other figure; the shares add up to 100.</summary>
    public IReadOnlyList<OwnPart> Parts { get; init; } = [];

    /// <summary>Water in it, 0 to 100 [%].</summary>
    public decimal? Water { get; init; }

    /// <summary>Figures by property.</summary>
    [JsonIgnore]
    public Dictionary<Property, OwnFigure> Figures { get; init; } = [];
}
