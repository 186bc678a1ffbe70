using System.Globalization;
using Materia.Api.Evaluations;
using Materia.Api.Serving;
using Materia.Formulation;
using Materia.Search;

namespace Materia.Api.Pages.Formulas;

/// <summary>What the formula page shows: the formula of the address, what is wrong with it, and what it comes to.</summary>
public sealed class FormulaState
{
    private FormulaState(Formula formula, IReadOnlyList<(string Pointer, string Message)> faults, Evaluation? evaluation)
    {
        Formula = formula;
        Faults = faults;
        Evaluation = evaluation;
    }

    /// <summary>The formula.</summary>
    public Formula Formula { get; }

    /// <summary>What has to be put right.</summary>
    public IReadOnlyList<(string Pointer, string Message)> Faults { get; }

    /// <summary>What it comes to; <see langword="null"/> while anything is wrong or nothing is in it.</summary>
    public Evaluation? Evaluation { get; }

    /// <summary>The sum of the percentages that are given [%].</summary>
    public decimal Sum => Formula.Lines.Sum(l => Math.Clamp(l.Percent ?? 0, -1_000_000, 1_000_000));

    /// <summary>Reads the address.</summary>
    public static FormulaState Read(string? link, ServedRelease served, DateOnly today)
    {
        if (string.IsNullOrEmpty(link))
        {
            return new(new Formula(), [], null);
        }

        var (formula, faults) = FormulaLink.Decode(link);
        if (formula is null)
        {
            return new(new Formula(), Shown(faults, served.Index), null);
        }

        if (formula.Lines.Count == 0)
        {
            return new(formula, [], null);
        }

        var normalisation = NormalisedFormula.Create(formula, served.Release);
        return normalisation.Formula is { } normalised
            ? new(formula, [], Evaluator.Evaluate(normalised, served.Release, new EvaluationOptions { AsOf = today }))
            : new(formula, Shown(normalisation.Faults, served.Index), null);
    }

    /// <summary>What is wrong with one line.</summary>
    public IEnumerable<string> OfLine(int line)
    {
        var pointer = string.Create(CultureInfo.InvariantCulture, $"/lines/{line}");
        return Faults.Where(f => f.Pointer == pointer || f.Pointer.StartsWith(pointer + "/", StringComparison.Ordinal)).Select(f => f.Message);
    }

    /// <summary>What is wrong with the whole.</summary>
    public IEnumerable<string> Elsewhere => Faults.Where(f => !f.Pointer.StartsWith("/lines/", StringComparison.Ordinal)).Select(f => f.Message);

    private static List<(string Pointer, string Message)> Shown(IReadOnlyList<FormulaFault> faults, IngredientIndex index) =>
        [.. FormulaProblem.Of(faults, index).ByKey().SelectMany(f => f.Value.Select(m => (f.Key, m)))];
}
