using Materia.Formulation.OwnMaterials;

namespace Materia.Formulation;

/// <summary>One line of a formula: a material, and its amount as <c>percent</c>, as <c>mass</c> with a <c>unit</c>, or as the balance.</summary>
public sealed record FormulaLine
{
    /// <summary>The id of an ingredient of the catalogue, such as <c>shea-butter</c>.</summary>
    public string? Ingredient { get; init; }

    /// <summary>A material that the catalogue lacks, or one lot with its own analysis; stands in place of <c>ingredient</c>.</summary>
    public OwnMaterial? Own { get; init; }

    /// <summary>The share by mass, over 0 and up to 100 [%].</summary>
    public decimal? Percent { get; init; }

    /// <summary>The mass, in <see cref="Unit"/>; when one line has a mass, every line has one.</summary>
    public decimal? Mass { get; init; }

    /// <summary>The unit of <see cref="Mass"/>: <c>g</c>, <c>kg</c>, <c>mg</c>, <c>oz</c> or <c>lb</c> (avoirdupois).</summary>
    public string? Unit { get; init; }

    /// <summary>True on the one line that fills up to 100 % (q.s.).</summary>
    public bool? Balance { get; init; }

    /// <summary>The phase it is worked in.</summary>
    public Phase? Phase { get; init; }

    /// <summary>What the maker calls this line, where it differs from the ingredient's name; at most 200 characters.</summary>
    public string? Name { get; init; }
}
