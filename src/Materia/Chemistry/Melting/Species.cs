namespace Materia.Chemistry.Melting;

/// <summary>One species of a blend, ready for the equilibrium.</summary>
/// <param name="Class">The class it crystallises in.</param>
/// <param name="Moles">Amount [mol], on any common basis.</param>
/// <param name="MolarMass">Molar mass [g/mol].</param>
/// <param name="MeltingPoint">Melting point, the class's shift included [K].</param>
/// <param name="EnthalpyOfFusion">Enthalpy of fusion [J/mol].</param>
public readonly record struct Species(CrystalClass Class, double Moles, double MolarMass, double MeltingPoint, double EnthalpyOfFusion);
