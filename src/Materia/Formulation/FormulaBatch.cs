namespace Materia.Formulation;

/// <summary>How much to make: a mass, a volume, or a number of jars to fill, and the scale it is weighed on.</summary>
public sealed record FormulaBatch
{
    /// <summary>The mass to weigh in, in <see cref="Unit"/>; may be left out when <see cref="Volume"/>, or <see cref="Jars"/> with the size of a jar, says how much is needed.</summary>
    public decimal? Mass { get; init; }

    /// <summary>The volume to make, as it is filled (whipped where an overrun is given) [mL]; stands in place of <see cref="Mass"/>, needs a density and is approximate.</summary>
    public decimal? Volume { get; init; }

    /// <summary>The unit of mass and scale resolution: <c>g</c>, <c>kg</c>, <c>mg</c>, <c>oz</c> or <c>lb</c>; grams when left out with <see cref="Mass"/>.</summary>
    public string? Unit { get; init; }

    /// <summary>The smallest step that the scale shows, in <see cref="Unit"/>; that of a usual scale (0.1 g, 0.0001 kg, 100 mg, 0.005 oz, 0.0005 lb) when left out.</summary>
    public decimal? ScaleResolution { get; init; }

    /// <summary>What stays in beakers, whisk and spatula, 0 to 90 [%] of the mass weighed in; nothing when left out.</summary>
    public decimal? LossPercent { get; init; }

    /// <summary>How many jars to fill.</summary>
    public int? Jars { get; init; }

    /// <summary>The volume of one jar filled to the brim [mL]; needs a density.</summary>
    public decimal? JarVolume { get; init; }

    /// <summary>The mass that goes into one jar, in <see cref="Unit"/>; stands in place of <see cref="JarVolume"/>.</summary>
    public decimal? JarMass { get; init; }

    /// <summary>The share of a jar's volume that stays empty, 0 to 50 [%]; 5 when left out.</summary>
    public decimal? HeadspacePercent { get; init; }
}
