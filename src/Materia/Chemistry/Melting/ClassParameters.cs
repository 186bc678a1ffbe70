namespace Materia.Chemistry.Melting;

/// <summary>How a class crystallises.</summary>
/// <param name="Form">The crystal form whose melting points are used.</param>
/// <param name="TemperatureShift">Added to the melting point of every species of the class [K].</param>
/// <param name="MixingWeight">0 for separate pure crystals, 1 for an ideal solid solution, between them a weighted mixing entropy.</param>
/// <param name="Crystallinity">The share of the equilibrium solid that a well-tempered fat shows [1].</param>
public sealed record ClassParameters(Polymorph Form, double TemperatureShift, double MixingWeight, double Crystallinity);
