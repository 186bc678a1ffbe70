using System.Collections.Frozen;
using Materia.Catalogue;

namespace Materia.Search.Ranges;

/// <summary>Picks the figures of an ingredient that a <see cref="PropertyGroup"/> looks at.</summary>
internal static class GroupFigures
{
    private const decimal RoomTemperature = 20;

    private static readonly Property[] Melting =
        [Property.MeltingRange, Property.SlipMeltingPoint, Property.MeltingPoint, Property.ClearPoint, Property.DropPoint];

    private static readonly FrozenDictionary<PropertyGroup, Property> Single = new Dictionary<PropertyGroup, Property>
    {
        [PropertyGroup.Iodine] = Property.IodineValue,
        [PropertyGroup.Saponification] = Property.SaponificationValue,
        [PropertyGroup.RequiredHlb] = Property.RequiredHlb,
        [PropertyGroup.Hlb] = Property.Hlb,
        [PropertyGroup.CationExchangeCapacity] = Property.CationExchangeCapacity,
        [PropertyGroup.Swelling] = Property.SwellingVolume,
        [PropertyGroup.ShelfLife] = Property.ShelfLife,
        [PropertyGroup.EffectivePh] = Property.EffectivePh,
        [PropertyGroup.MolarMass] = Property.MolarMass,
        [PropertyGroup.FlashPoint] = Property.FlashPoint,
    }.ToFrozenDictionary();

    /// <summary>The figures, the one to sort by first; empty where the catalogue has none.</summary>
    public static IReadOnlyList<RangeFigure> Of(Ingredient ingredient, PropertyGroup group) => group switch
    {
        PropertyGroup.Melting => [.. Melting.SelectMany(p => Used(ingredient, p)).Select(RangeFigure.Of)],
        PropertyGroup.Density => Density(ingredient),
        PropertyGroup.Viscosity => [.. NearestToRoom(Used(ingredient, Property.Viscosity)).Select(RangeFigure.Of)],
        PropertyGroup.Comedogenic => [.. ingredient.Comedogenic.Select(Grade)],
        _ when Single.TryGetValue(group, out var property) => [.. Used(ingredient, property).Select(RangeFigure.Of)],
        _ => throw new ArgumentOutOfRangeException(nameof(group), group, "A group that has no figures."),
    };

    private static RangeFigure[] Density(Ingredient ingredient)
    {
        RangeFigure[] measured = [.. NearestToRoom(Used(ingredient, Property.Density)).Select(RangeFigure.Of)];
        return measured.Length > 0
            ? measured
            : [.. NearestToRoom(Used(ingredient, Property.RelativeDensity).Where(f => WaterDensity.At(f.At?.WaterTemperature) is not null)).Select(Absolute)];
    }

    private static RangeFigure Absolute(Figure relative)
    {
        var water = WaterDensity.At(relative.At?.WaterTemperature) ?? throw new InvalidOperationException("Only figures whose water is known come here.");
        var range = RangeFigure.Of(relative);
        return range with { Low = Times(range.Low), High = Times(range.High), Central = decimal.Round(range.Central * water, 4), Unit = Units.GramPerMillilitre };

        decimal? Times(decimal? end) => end is { } value ? decimal.Round(value * water, 4) : null;
    }

    private static RangeFigure Grade(ComedogenicNote note) => new(null, note.Low, note.High, Units.One, null, (note.Low + note.High) / 2m);

    // Density and viscosity mean little without their temperature, so one figure stands for the ingredient, and one that
    // states its temperature goes before one that doesn't.
    private static IEnumerable<Figure> NearestToRoom(IEnumerable<Figure> figures) =>
        figures.OrderBy(f => f.At?.Temperature is { } t ? Math.Abs(t - RoomTemperature) : decimal.MaxValue).Take(1);

    // A lone statement carries no mark; of several under the same conditions the marked one counts.
    private static IEnumerable<Figure> Used(Ingredient ingredient, Property property) =>
        ingredient.Properties.Where(f => f.Property == property)
            .GroupBy(f => f.At)
            .SelectMany(same => same.Count() == 1 ? same : same.Where(f => f.Used));
}
