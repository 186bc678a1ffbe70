using Materia.Catalogue;

namespace Materia.Chemistry.Heating;

/// <summary>Sizes of grains by kind of powder, loose clusters included; the supplier's sheet has the true ones.</summary>
public static class GrainSizes
{
    private const string Unit = "um";

    /// <summary>Clays.</summary>
    public static SourcedFigure Clay { get; } = SourcedFigure.Recalled("grain size of clays in oil", 5, 2, 20, Unit);

    /// <summary>Starches.</summary>
    public static SourcedFigure Starch { get; } = SourcedFigure.Recalled("grain size of starches", 15, 5, 40, Unit);

    /// <summary>Mineral powders and pigments.</summary>
    public static SourcedFigure Mineral { get; } = SourcedFigure.Recalled("grain size of mineral powders", 10, 1, 40, Unit);

    /// <summary>Ground plants, which have no density in the catalogue as a rule.</summary>
    public static SourcedFigure Plant { get; } = SourcedFigure.Recalled("grain size of ground plants", 75, 40, 150, Unit);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SourcedFigure> All { get; } = [Clay, Starch, Mineral, Plant];

    /// <summary>The grain size to take for a powder.</summary>
    public static SourcedFigure Of(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.Kind switch
        {
            IngredientKind.Clay => Clay,
            IngredientKind.Starch => Starch,
            _ => ingredient.Origin?.From == OriginKind.Plant ? Plant : Mineral,
        };
    }
}
