using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Melting;

namespace Materia.Formulation.Optimising;

/// <summary>
/// The figures of a blend as a function of its shares, prepared so that thousands of blends of the same materials can be tried: the same
/// rules as an evaluation, without ranges and explanations. Work space of one search and one thread.
/// </summary>
internal sealed class FigureModel
{
    private readonly RatioColumns?[] ratios;
    private readonly FlowColumns?[] flows;
    private readonly MeltingColumns? melting;
    private readonly int[] activeBuffer;
    private readonly List<(double Temperature, double Solid)> known = [];

    public FigureModel(Release release, IReadOnlyList<MaterialColumn> columns, IReadOnlyList<BlendFigure> figures)
    {
        Columns = columns;
        Figures = figures;
        activeBuffer = new int[columns.Count];
        var index = MaterialIndex.For(release);
        var materials = new Dictionary<Ingredient, Material>(ReferenceEqualityComparer.Instance);
        Material Find(Ingredient ingredient) => materials.TryGetValue(ingredient, out var known) ? known : materials[ingredient] = index.Find(ingredient);
        ratios = [.. figures.Select(f => IsMelting(f) || f.Property == BlendProperty.Viscosity ? null : RatioColumns.Of(f, columns, Find))];
        flows = [.. figures.Select(f => f.Property == BlendProperty.Viscosity ? new FlowColumns(f.Temperature!.Value, columns, Find) : null)];
        melting = figures.Any(IsMelting) ? new MeltingColumns(release, columns) : null;
    }

    /// <summary>The materials.</summary>
    public IReadOnlyList<MaterialColumn> Columns { get; }

    /// <summary>The figures.</summary>
    public IReadOnlyList<BlendFigure> Figures { get; }

    /// <summary>How many blends were worked out.</summary>
    public int Evaluations { get; private set; }

    /// <summary>Works out all figures, on the scale on which they are felt, and the share of the mass concerned that each rests on.</summary>
    /// <param name="x">The share of each material, none negative, not all nought.</param>
    /// <param name="values">Takes the figures; not a number where there is none.</param>
    /// <param name="covers">Takes the shares, 0 to 1.</param>
    public void At(ReadOnlySpan<double> x, Span<double> values, Span<double> covers)
    {
        Evaluations++;
        var count = 0;
        for (var j = 0; j < x.Length; j++)
        {
            if (x[j] > 0)
            {
                activeBuffer[count++] = j;
            }
        }

        var active = activeBuffer.AsSpan(0, count);
        PhaseEquilibrium? equilibrium = null;
        double fatCover = 1;
        if (melting is not null)
        {
            equilibrium = melting.Of(x, active);
            fatCover = melting.Cover(x, active);
        }

        known.Clear();
        for (var f = 0; f < Figures.Count; f++)
        {
            if (ratios[f] is { } ratio)
            {
                (values[f], covers[f]) = ratio.At(x, active);
            }
            else if (flows[f] is { } flow)
            {
                (values[f], covers[f]) = flow.At(x, active);
            }
            else
            {
                covers[f] = fatCover;
                values[f] = equilibrium is null ? double.NaN
                    : Figures[f].Property == BlendProperty.ClearPoint ? MeltingColumns.ClearPoint(equilibrium, known)
                    : Solid(equilibrium, Figures[f].Temperature!.Value);
            }
        }
    }

    /// <summary>The figures of one material by itself, as they are felt.</summary>
    public double[] Alone(int column)
    {
        var shares = new double[Columns.Count];
        shares[column] = 100;
        var (values, covers) = (new double[Figures.Count], new double[Figures.Count]);
        At(shares, values, covers);
        return values;
    }

    /// <summary>Whether a figure is a mean of what the materials have, so that no blend lies outside them.</summary>
    public bool IsMean(int figure) => ratios[figure] is not null;

    private double Solid(PhaseEquilibrium equilibrium, double temperature)
    {
        var solid = equilibrium.SolidContentAt(temperature);
        known.Add((temperature, solid));
        return solid;
    }

    private static bool IsMelting(BlendFigure figure) => figure.Property is BlendProperty.SolidContent or BlendProperty.ClearPoint;
}
