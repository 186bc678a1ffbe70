namespace Materia.Formulation.Optimising;

/// <summary>
/// What a search makes least: the sum of the costs of all goals. Outputs of a blend stand in one list: its figures as they are felt,
/// the share of the mass that each figure rests on, and the share of each material.
/// </summary>
internal sealed class Objective(FigureModel model, IReadOnlyList<Goal> goals)
{
    /// <summary>The figures of blends.</summary>
    public FigureModel Model => model;

    /// <summary>The goals.</summary>
    public IReadOnlyList<Goal> Goals => goals;

    /// <summary>How many outputs a blend has.</summary>
    public int Outputs => (2 * model.Figures.Count) + model.Columns.Count;

    /// <summary>The place of what figure <paramref name="figure"/> rests on.</summary>
    public static int Cover(FigureModel model, int figure) => model.Figures.Count + figure;

    /// <summary>The place of the share of material <paramref name="column"/>.</summary>
    public static int Share(FigureModel model, int column) => (2 * model.Figures.Count) + column;

    /// <summary>The outputs of a blend.</summary>
    public double[] OutputsAt(ReadOnlySpan<double> x)
    {
        var outputs = new double[Outputs];
        var figures = model.Figures.Count;
        model.At(x, outputs.AsSpan(0, figures), outputs.AsSpan(figures, figures));
        x.CopyTo(outputs.AsSpan(2 * figures));
        return outputs;
    }

    /// <summary>The cost of a blend.</summary>
    public double At(ReadOnlySpan<double> x) => Of(OutputsAt(x));

    /// <summary>The cost of outputs.</summary>
    public double Of(ReadOnlySpan<double> outputs)
    {
        double sum = 0;
        foreach (var goal in goals)
        {
            sum += goal.Of(outputs[goal.Output]);
        }

        return sum;
    }

    /// <summary>The part of the cost that is the distance.</summary>
    public double Distance(ReadOnlySpan<double> outputs)
    {
        double sum = 0;
        foreach (var goal in goals)
        {
            sum += goal.IsDistance ? goal.Of(outputs[goal.Output]) : 0;
        }

        return sum;
    }
}
