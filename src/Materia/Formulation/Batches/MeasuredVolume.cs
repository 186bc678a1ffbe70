using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Batches;

/// <summary>Masses and volumes of a material as it stands on the shelf at 20 °C.</summary>
internal static class MeasuredVolume
{
    private const double Room = 20;

    // Nothing that is sold by volume is lighter [g/mL]; what comes out lower has figures that do not belong together.
    private const double LeastDensity = 0.01;

    /// <summary>
    /// The volume of a mass of a liquid; <see langword="null"/> where no density is known, and for what is solid, which no beaker measures.
    /// </summary>
    public static ApproximateVolume? Of(NormalisedLine line, decimal grams, Release release)
    {
        if (!line.Parts.All(p => IsLiquid(p.Ingredient)) || Density(line, release) is not { } density)
        {
            return null;
        }

        var mass = (double)grams;
        return new ApproximateVolume(mass / density.Value, mass / density.High, mass / density.Low, Units.Millilitre);
    }

    /// <summary>
    /// The density of a line's material [g/mL]; a mixture's volumes add up. <see langword="null"/> where it is not known, and for powders,
    /// whose stored density leaves out the air between the grains.
    /// </summary>
    public static Interval? Density(NormalisedLine line, Release release)
    {
        double volume = 0;
        double largest = 0;
        double smallest = 0;
        foreach (var part in line.Parts)
        {
            var material = MaterialIndex.For(release).Find(part.Ingredient);
            if (material.IsPowder || material.Density?.At(Room) is not { Low: > LeastDensity } density)
            {
                return null;
            }

            var share = (double)part.Share;
            var solid = material.MeltedFrom > Room || material.MeltingIsUnknown ? DensityOfMaterial.SolidToLiquid : 1;
            volume += share / density.Value;
            largest += share / density.Low;
            smallest += share / (density.High * solid);
        }

        return new Interval(1 / volume, 1 / largest, 1 / smallest);
    }

    // What is liquid by its kind unless it melts above room temperature; of the other kinds only what is known to be melted there.
    private static bool IsLiquid(Ingredient ingredient)
    {
        var melted = MeltingLimit.Of(ingredient)?.Temperature;
        return ingredient.Kind is IngredientKind.Oil or IngredientKind.Ester or IngredientKind.Hydrocarbon or IngredientKind.EssentialOil
                or IngredientKind.Hydrosol or IngredientKind.Solvent or IngredientKind.Silicone
            ? melted is null or <= Room
            : melted <= Room;
    }
}
