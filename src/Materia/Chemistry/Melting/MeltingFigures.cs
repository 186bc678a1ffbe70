namespace Materia.Chemistry.Melting;

/// <summary>The figures of one material's melting that a search looks at, from the central curve alone.</summary>
/// <param name="SolidAt20">Solid content at 20 °C [% by mass of the fat phase].</param>
/// <param name="SolidAt25">Solid content at 25 °C [% by mass of the fat phase].</param>
/// <param name="SolidAt32">Solid content at 32 °C [% by mass of the fat phase].</param>
/// <param name="SolidAt35">Solid content at 35 °C [% by mass of the fat phase].</param>
/// <param name="ClearPoint">Where it is clear, as in <see cref="BlendMelting.ClearPoint"/> [Cel]; <see langword="null"/> when nothing is solid at −10 °C.</param>
public sealed record MeltingFigures(double SolidAt20, double SolidAt25, double SolidAt32, double SolidAt35, double? ClearPoint);
