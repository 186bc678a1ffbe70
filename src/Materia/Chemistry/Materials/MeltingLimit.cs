using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>
/// The temperature from which an ingredient is surely melted, from its stored melting figures: the greatest of them. What melts together
/// dissolves in the rest and melts lower, so a blend is melted at the highest of its ingredients' limits.
/// </summary>
internal static class MeltingLimit
{
    private static readonly Property[] MeltingFigures =
    [
        Property.ClearPoint, Property.MeltingRange, Property.MeltingPoint, Property.SlipMeltingPoint, Property.DropPoint, Property.CongealingPoint,
    ];

    /// <summary>The limit [Cel] and its figure; nothing when no melting figure is stored.</summary>
    public static (double Temperature, Figure Stored)? Of(Ingredient ingredient)
    {
        (double Temperature, Figure Stored)? limit = null;
        foreach (var property in MeltingFigures)
        {
            if (StoredFigures.Find(ingredient, property) is { } figure && (limit is null || (double)figure.Greatest() > limit.Value.Temperature))
            {
                limit = ((double)figure.Greatest(), figure);
            }
        }

        return limit;
    }
}
