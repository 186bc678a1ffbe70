namespace Materia.Chemistry.Melting;

/// <summary>The curve of a blend and the curves that its band is made of.</summary>
/// <param name="Usual">The curve itself.</param>
/// <param name="Soft">The model shifted to the soft side.</param>
/// <param name="Firm">The model shifted to the firm side.</param>
/// <param name="Softest">The composition at the soft end of its spread; the curve itself where no spread is held.</param>
/// <param name="Firmest">The composition at the firm end of its spread; the curve itself where no spread is held.</param>
public sealed record CurveSet(SolidContentCurve Usual, SolidContentCurve Soft, SolidContentCurve Firm, SolidContentCurve Softest, SolidContentCurve Firmest)
{
    internal static CurveSet Of(Blend blend, BlendSpecies species)
    {
        var parameters = ClassTable.In(blend.MeltingModel);
        var usual = new SolidContentCurve(species.System(parameters));
        SolidContentCurve AtEnd(Firmness end) =>
            species.Space.AtEnd(blend, end) is { } columns ? new SolidContentCurve(new SpeciesSystem(columns, parameters), every: false) : usual;
        return new(
            usual,
            new SolidContentCurve(species.System(Band.Soft(blend.MeltingModel)), every: false),
            new SolidContentCurve(species.System(Band.Firm(blend.MeltingModel)), every: false),
            AtEnd(Firmness.Softest),
            AtEnd(Firmness.Firmest));
    }
}
