using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Contents;
using Materia.Regulation.Rollup;

namespace Materia.Regulation;

/// <summary>A formula with what decides which rules bind it.</summary>
public sealed class RegulatedFormula
{
    private SubstanceRollup? rollup;

    /// <summary>Describes a formula.</summary>
    /// <param name="lines">The materials, each once; shares are exact percentages of the whole.</param>
    /// <param name="release">The release that the materials and the rules come from.</param>
    /// <param name="use">The type of product; <see langword="null"/> where it was not said.</param>
    /// <param name="authorities">Whose rules count.</param>
    /// <param name="asOf">The day on which the product is placed on the market.</param>
    public RegulatedFormula(
        IReadOnlyList<RegulatedLine> lines, Release release, ProductUse? use, IReadOnlyList<Authority> authorities, DateOnly asOf)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(release);
        Lines = lines;
        Release = release;
        Use = use;
        Authorities = authorities;
        AsOf = asOf;
        Contents = [.. lines.Select(l => IngredientContents.Of(l.Ingredient, release))];
    }

    /// <summary>The materials.</summary>
    public IReadOnlyList<RegulatedLine> Lines { get; }

    /// <summary>The release.</summary>
    public Release Release { get; }

    /// <summary>The type of product, where it was said.</summary>
    public ProductUse? Use { get; }

    /// <summary>Whose rules count.</summary>
    public IReadOnlyList<Authority> Authorities { get; }

    /// <summary>The day on which the product is placed on the market.</summary>
    public DateOnly AsOf { get; }

    /// <summary>What each material consists of, in the order of <see cref="Lines"/>.</summary>
    internal IngredientContents[] Contents { get; }

    /// <summary>The substances that rules name, added up at the first call.</summary>
    internal SubstanceRollup Rollup => rollup ??= new SubstanceRollup(this);
}
