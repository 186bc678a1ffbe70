using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Optimising;

/// <summary>
/// A figure that is a ratio of sums over the materials, Σ x·n / Σ x·d, with the share of the mass concerned that it rests on,
/// Σ x·k / Σ x·c. All but melting and flow are of this form.
/// </summary>
internal sealed class RatioColumns(int count)
{
    private readonly double[] numerator = new double[count];
    private readonly double[] denominator = new double[count];
    private readonly double[] known = new double[count];
    private readonly double[] concerned = new double[count];

    /// <summary>Counts <paramref name="share"/> of a part whose figure is <paramref name="value"/> and weighs <paramref name="weight"/> in it.</summary>
    public void Add(int column, double share, double value, double weight)
    {
        numerator[column] += share * weight * value;
        denominator[column] += share * weight;
        known[column] += share;
        concerned[column] += share;
    }

    /// <summary>Counts a part that should have a figure and has none.</summary>
    public void AddUnknown(int column, double share) => concerned[column] += share;

    /// <summary>The value, not a number where nothing has the figure, and the share of the mass concerned that has it.</summary>
    public (double Value, double Cover) At(ReadOnlySpan<double> x, ReadOnlySpan<int> active)
    {
        double n = 0, d = 0, k = 0, c = 0;
        foreach (var j in active)
        {
            n += x[j] * numerator[j];
            d += x[j] * denominator[j];
            k += x[j] * known[j];
            c += x[j] * concerned[j];
        }

        return (d > 0 ? n / d : double.NaN, c > 0 ? k / c : 1);
    }

    /// <summary>The columns of a figure.</summary>
    public static RatioColumns Of(BlendFigure figure, IReadOnlyList<MaterialColumn> columns, Func<Ingredient, Material> find)
    {
        var ratio = new RatioColumns(columns.Count);
        for (var j = 0; j < columns.Count; j++)
        {
            if (figure.Property == BlendProperty.Cost)
            {
                ratio.Add(j, 1, columns[j].PricePerKilogram is { } price ? (double)price : double.NaN, 1);
                continue;
            }

            foreach (var part in columns[j].Parts)
            {
                var share = (double)part.Share;
                switch (PartFigures.Of(figure, find(part.Ingredient)))
                {
                    case { Value: { } value, Weight: > 0 and var weight }:
                        ratio.Add(j, share, value, weight);
                        break;
                    case { Concerned: true }:
                        ratio.AddUnknown(j, share);
                        break;
                }
            }
        }

        return ratio;
    }
}
