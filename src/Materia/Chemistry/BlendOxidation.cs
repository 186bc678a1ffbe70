namespace Materia.Chemistry;

/// <summary>How readily the fats of a blend oxidise: an index with its bands and what carries it, never a number of months.</summary>
public sealed record BlendOxidation
{
    /// <summary>
    /// The bands of the index. The edges are this library's own, set between the compositions of oils whose stability was measured; the
    /// words say how fast, not how good.
    /// </summary>
    public static IReadOnlyList<OxidationBand> Bands { get; } =
    [
        new("slow", 0, 1.5),
        new("moderate", 1.5, 4),
        new("fast", 4, 8),
        new("very-fast", 8, null),
    ];

    /// <summary>The oxidisability index of the fatty acids: 0 for a saturated fat, 1 for pure oleic acid, 10.3 for pure linoleic acid [1].</summary>
    public required ComputedFigure CoxValue { get; init; }

    /// <summary>The band that the index falls in; <see langword="null"/> when the index is absent.</summary>
    public OxidationBand? Band { get; init; }

    /// <summary>Which ingredients carry the index, by falling share.</summary>
    public IReadOnlyList<OxidationCarrier> Carriers { get; init; } = [];

    /// <summary>The index for highly unsaturated acids [1]; only when acids with four or more double bonds are present.</summary>
    public ComputedFigure? PeroxidizabilityIndex { get; init; }

    /// <summary>How many times faster the blend oxidises at 30 than at 20 °C [1].</summary>
    public required ComputedFigure RateAt30To20 { get; init; }

    /// <summary>
    /// The least tocopherols that the ingredients' figures promise [mg/kg] of the lipid phase: ingredients without a figure count as
    /// none. <see langword="null"/> when no ingredient has one.
    /// </summary>
    public ComputedFigure? Tocopherols { get; init; }

    /// <summary>What may honestly be said of shelf life, in sentences.</summary>
    public required IReadOnlyList<string> Storage { get; init; }

    /// <summary>Works out the oxidation figures of <paramref name="blend"/>. The index is absent when under half of the fat-bearing mass has a profile.</summary>
    public static BlendOxidation Of(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return OxidationSum.Of(blend);
    }
}

/// <summary>A band of the oxidisability index.</summary>
/// <param name="Word">How fast the blend oxidises beside other fats.</param>
/// <param name="From">The index from which it counts [1].</param>
/// <param name="Below">The index at which the next band begins [1]; <see langword="null"/> for the last.</param>
public sealed record OxidationBand(string Word, double From, double? Below);

/// <summary>An ingredient's part in the oxidisability index.</summary>
/// <param name="Ingredient">The component's name.</param>
/// <param name="CoxValue">Its own index [1].</param>
/// <param name="PercentOfTotal">Its share of the blend's index [%].</param>
public sealed record OxidationCarrier(string Ingredient, double CoxValue, double PercentOfTotal);
