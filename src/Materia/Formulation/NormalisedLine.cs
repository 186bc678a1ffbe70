using Materia.Catalogue;
using Materia.Formulation.Normalising;

namespace Materia.Formulation;

/// <summary>A line whose material is known and whose share is a percentage.</summary>
public sealed class NormalisedLine
{
    internal NormalisedLine(FormulaLine submitted, LineMaterial material, decimal percent)
    {
        Ingredient = material.Ingredient;
        IsOwn = material.Own;
        Parts = material.Parts;
        Percent = percent;
        Phase = submitted.Phase;
        Name = submitted.Name;
    }

    /// <summary>The ingredient; for a ready-made mixture its name and kind only, see <see cref="Parts"/>.</summary>
    public Ingredient Ingredient { get; }

    /// <summary>What results call it: the ingredient's id, or the maker's own name.</summary>
    public string Material => Ingredient.Id;

    /// <summary>True when the maker described it.</summary>
    public bool IsOwn { get; }

    /// <summary>The ingredients it consists of, with shares that add up to 1.</summary>
    public IReadOnlyList<MaterialPart> Parts { get; }

    /// <summary>True when it is a ready-made mixture described by its parts.</summary>
    public bool IsMixture => IsOwn && !(Parts.Count == 1 && ReferenceEquals(Parts[0].Ingredient, Ingredient));

    /// <summary>The share by mass [%].</summary>
    public decimal Percent { get; }

    /// <summary>The phase, where one was given.</summary>
    public Phase? Phase { get; }

    /// <summary>What the maker calls the line, where that was given.</summary>
    public string? Name { get; }
}
