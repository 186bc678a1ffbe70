namespace Materia.Formulation.Batches;

/// <summary>How much to make, with everything that was left out filled in.</summary>
/// <param name="Mass">The mass to weigh in, in <paramref name="Unit"/>; <see langword="null"/> when a volume or the jars say how much is needed.</param>
/// <param name="Unit">The unit of mass and scale resolution.</param>
/// <param name="ScaleResolution">The smallest step of the scale, in <paramref name="Unit"/>.</param>
/// <param name="LossPercent">What stays behind in beakers [%] of the mass weighed in.</param>
/// <param name="Jars">How many jars to fill, where that was given.</param>
/// <param name="JarVolume">The volume of one jar filled to the brim [mL], where that was given.</param>
/// <param name="HeadspacePercent">The share of a jar that stays empty [%].</param>
public sealed record NormalisedBatch(decimal? Mass, MassUnit Unit, decimal ScaleResolution, decimal LossPercent, int? Jars, decimal? JarVolume, decimal HeadspacePercent)
{
    /// <summary>The volume to make [mL], where that was given in place of a mass.</summary>
    public decimal? Volume { get; init; }

    /// <summary>The mass that goes into one jar, in <see cref="Unit"/>, where that was given in place of a volume.</summary>
    public decimal? JarMass { get; init; }

    /// <summary>What was left out and filled in, in sentences.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];
}
