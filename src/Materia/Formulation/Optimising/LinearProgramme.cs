using Google.OrTools.LinearSolver;

namespace Materia.Formulation.Optimising;

/// <summary>
/// A linear programme: bounded variables, rows with a lower and an upper end, and a cost to make least. Solved by the revised simplex
/// method of a library (GLOP), in one thread, so that the same programme gives the same answer.
/// </summary>
internal sealed class LinearProgramme : IDisposable
{
    /// <summary>
    /// The dual simplex was seen to go round in circles on degenerate programmes of this kind; the primal one was not. The bound on its
    /// iterations is counted, not timed, and lies tens of times above what such a programme takes, so that no request can hang.
    /// </summary>
    private const string Settings = "use_dual_simplex: false max_number_of_iterations: 5000";

    private readonly Solver solver = Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("The linear solver could not be loaded.");
    private readonly List<Variable> variables = [];

    public LinearProgramme()
    {
        solver.SetSolverSpecificParametersAsString(Settings);
        solver.Objective().SetMinimization();
    }

    /// <summary>Adds a variable and gives its place.</summary>
    public int Variable(double low, double high, double cost = 0)
    {
        var variable = solver.MakeNumVar(low, high, string.Empty);
        if (cost != 0)
        {
            solver.Objective().SetCoefficient(variable, cost);
        }

        variables.Add(variable);
        return variables.Count - 1;
    }

    /// <summary>Adds a row: low ≤ Σ factor × variable ≤ high.</summary>
    public void Row(double low, double high, params ReadOnlySpan<(int Variable, double Factor)> terms)
    {
        var row = solver.MakeConstraint(low, high, string.Empty);
        foreach (var (variable, factor) in terms)
        {
            if (factor != 0)
            {
                row.SetCoefficient(variables[variable], factor);
            }
        }
    }

    /// <summary>The values of the variables at the least cost; <see langword="null"/> when no values keep all rows, or none were found in time.</summary>
    public (double[] Values, double Cost)? Solve() =>
        solver.Solve() == Solver.ResultStatus.OPTIMAL ? ([.. variables.Select(v => v.SolutionValue())], solver.Objective().Value()) : null;

    public void Dispose() => solver.Dispose();
}
