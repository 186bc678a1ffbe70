namespace Materia.Formulation.Batches;

/// <summary>How much to make, with everything that was left out filled in.</summary>
/// <param name="Mass">The mass to weigh in, in <paramref name="Unit"/>; <see langword="null"/> when the jars say how much is needed.</param>
/// <param name="Unit">The unit of mass and scale resolution.</param>
/// <param name="ScaleResolution">The smallest step of the scale, in <paramref name="Unit"/>.</param>
/// <param name="LossPercent">What stays behind in beakers [%] of the mass weighed in.</param>
/// <param name="Jars">How many jars to fill, where that was given.</param>
/// <param name="JarVolume">The volume of one jar filled to the brim [mL], where that was given.</param>
/// <param name="HeadspacePercent">The share of a jar that stays empty [%].</param>
public sealed record NormalisedBatch(decimal? Mass, MassUnit Unit, decimal ScaleResolution, decimal LossPercent, int? Jars, decimal? JarVolume, decimal HeadspacePercent);
