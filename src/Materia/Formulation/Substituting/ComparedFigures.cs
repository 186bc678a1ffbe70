using Materia.Chemistry;
using Materia.Formulation.Optimising;

namespace Materia.Formulation.Substituting;

/// <summary>The figures by which two formulas are compared, as far as the original has them.</summary>
internal static class ComparedFigures
{
    /// <summary>A figure that rests on less than half of what it is about is not compared.</summary>
    private const double LeastCover = 0.5;

    private static readonly double[] SolidTemperatures = [10, 20, 25, 32, 40];

    private static readonly IReadOnlyList<BlendFigure> All =
    [
        .. SolidTemperatures.Select(t => new BlendFigure(BlendProperty.SolidContent, t)),
        new(BlendProperty.ClearPoint),
        new(BlendProperty.Viscosity, 32),
        new(BlendProperty.Viscosity, 60),
        new(BlendProperty.Density, 25),
        new(BlendProperty.IodineValue),
        new(BlendProperty.SaponificationValue),
        new(BlendProperty.Oxidisability),
        new(BlendProperty.Saturated),
        new(BlendProperty.Monounsaturated),
        new(BlendProperty.Polyunsaturated),
        new(BlendProperty.OilAbsorption),
        new(BlendProperty.WaterAbsorption),
        new(BlendProperty.CationExchangeCapacity),
        new(BlendProperty.SwellingVolume),
        new(BlendProperty.Hlb),
    ];

    /// <summary>The figures that <paramref name="original"/> has; viscosity where its flow section gives one, that is where it is melted.</summary>
    public static IReadOnlyList<BlendFigure> Of(Blend original, IReadOnlyList<MaterialColumn> lines, double[] shares)
    {
        var model = new FigureModel(original.Release, lines, All);
        var (values, covers) = (new double[All.Count], new double[All.Count]);
        model.At(shares, values, covers);
        var flow = BlendFlow.Of(original).Viscosity.Select(v => v.Temperature).ToList();
        return [.. All.Where((f, i) => !double.IsNaN(values[i]) && covers[i] >= LeastCover
            && (f.Property != BlendProperty.Viscosity || flow.Contains(f.Temperature!.Value)))];
    }
}
