using System.Collections.Frozen;
using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Preserving;

/// <summary>The oil that draws preservatives out of the water.</summary>
/// <param name="OilToWater">Volume of oil over volume of water [1].</param>
/// <param name="IsMineral">Whether hydrocarbons make up more than half of it.</param>
internal sealed record OilPhase(double OilToWater, bool IsMineral)
{
    // Common densities; the ratio enters an equation that is good to a factor of two.
    private const double OilDensity = 0.92;
    private const string Source = "jscc-23-714";

    /// <summary>Oil over water at 25 °C: in soya oil, in liquid paraffin. Read in the table of the source.</summary>
    private static readonly FrozenDictionary<string, (double Soya, double Paraffin)> Constants = new Dictionary<string, (double, double)>(StringComparer.Ordinal)
    {
        ["METHYLPARABEN"] = (7.5, 0.02),
        ["PROPYLPARABEN"] = (80, 0.5),
        ["BUTYLPARABEN"] = (280, 3),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The oil phase of a formula; <see langword="null"/> without oil, or where the water is not known.</summary>
    public static OilPhase? Of(IReadOnlyList<FormulaPart> parts, FreeWater water)
    {
        if (water.Anhydrous is not false || water.Percent.Typical == 0)
        {
            return null;
        }

        var oils = parts.Where(p => p.Kind is { } kind && Kinds.IsLipid(kind)).ToList();
        var mass = oils.Sum(p => (double)p.Share.Typical);
        return mass == 0 ? null : new OilPhase(
            mass / OilDensity / (double)water.Percent.Typical,
            oils.Where(p => p.Kind == IngredientKind.Hydrocarbon).Sum(p => (double)p.Share.Typical) > mass / 2);
    }

    /// <summary>How a preservative parts; <see langword="null"/> where no constant is known.</summary>
    /// <param name="part">The preservative.</param>
    /// <param name="percent">Its share of the formula [%], taken as % w/v.</param>
    /// <param name="undissociated">The share of it that is undissociated, 0 to 1: only that goes into oil.</param>
    public OilPartition? PartitionOf(FormulaPart part, double percent, double undissociated)
    {
        if (!Constants.TryGetValue(part.Inci, out var constants))
        {
            return null;
        }

        var constant = IsMineral ? constants.Paraffin : constants.Soya;
        var solubility = part.Ingredient is { } record && StoredFigures.Find(record, Property.WaterSolubility) is { } figure ? (double)figure.Central() / 10 : double.PositiveInfinity;
        return new OilPartition(
            IsMineral ? "liquid paraffin" : "soya oil", constant, OilToWater, WaterPhaseConcentration.Of(percent, constant * undissociated, OilToWater, solubility), Source);
    }
}
