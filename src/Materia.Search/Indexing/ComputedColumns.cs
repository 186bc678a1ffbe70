using Materia.Catalogue;
using Materia.Chemistry.Melting;
using Materia.Search.Ranges;

namespace Materia.Search.Indexing;

/// <summary>Figures that are worked out from the records rather than stored in them, in arrays by the ingredients' ordinals.</summary>
internal sealed class ComputedColumns
{
    // A tenth is far finer than the model's error, and coarse enough to read.
    private const int Decimals = 1;

    private readonly Dictionary<PropertyGroup, IReadOnlyList<RangeFigure>[]> columns;

    /// <summary>Works the figures of <paramref name="ingredients"/> out.</summary>
    public ComputedColumns(IReadOnlyList<Ingredient> ingredients, Release release)
    {
        MeltingFigures?[] melting = [.. ingredients.Select(i => IngredientMelting.FiguresOf(i, release))];
        columns = new()
        {
            [PropertyGroup.SolidAt20] = [.. melting.Select(m => Figures(m?.SolidAt20, Units.Percent))],
            [PropertyGroup.SolidAt25] = [.. melting.Select(m => Figures(m?.SolidAt25, Units.Percent))],
            [PropertyGroup.SolidAt32] = [.. melting.Select(m => Figures(m?.SolidAt32, Units.Percent))],
            [PropertyGroup.SolidAt35] = [.. melting.Select(m => Figures(m?.SolidAt35, Units.Percent))],
            [PropertyGroup.ClearPoint] = [.. melting.Select(m => Figures(m?.ClearPoint, Units.Celsius))],
        };
    }

    /// <summary>The figures of each ingredient, empty where none can be worked out; <see langword="null"/> for a group of stored figures.</summary>
    public IReadOnlyList<RangeFigure>[]? Find(PropertyGroup group) => columns.GetValueOrDefault(group);

    private static IReadOnlyList<RangeFigure> Figures(double? value, string unit)
    {
        if (value is null)
        {
            return [];
        }

        var rounded = decimal.Round((decimal)value, Decimals);
        return [new RangeFigure(null, rounded, rounded, unit, null, rounded) { Method = IngredientMelting.MethodId }];
    }
}
