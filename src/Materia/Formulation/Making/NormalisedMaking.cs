using Materia.Chemistry.Heating;

namespace Materia.Formulation.Making;

/// <summary>What it is made with and where, with everything that was left out filled in.</summary>
/// <param name="Power">The power of the plate [W]; <see langword="null"/> where none was given.</param>
/// <param name="Room">The temperature of the room [Cel].</param>
/// <param name="Chill">The temperature of the cold place [Cel].</param>
/// <param name="Vessel">The vessel.</param>
/// <param name="Assumed">What was left out, in sentences.</param>
public sealed record NormalisedMaking(double? Power, double Room, double Chill, Vessel Vessel, IReadOnlyList<string> Assumed);
