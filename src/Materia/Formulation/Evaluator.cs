using Materia.Catalogue;
using Materia.Formulation.Sections;

namespace Materia.Formulation;

/// <summary>Works out what can be computed of a formula.</summary>
public static class Evaluator
{
    /// <summary>Evaluates <paramref name="formula"/> on the release that it was normalised on.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="release">The release that the formula's ingredients come from.</param>
    /// <param name="options">What is asked for.</param>
    public static Evaluation Evaluate(NormalisedFormula formula, Release release, EvaluationOptions options)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(release);
        ArgumentNullException.ThrowIfNull(options);
        var input = new EvaluationInput(formula, release, options);
        return new Evaluation
        {
            Release = release.Number,
            Title = formula.Title,
            Use = formula.Use?.Id,
            Market = formula.Market,
            Warnings = [Evaluation.Caution],
            Results = options.Sections.Distinct().ToDictionary(s => s, input.Of),
        };
    }
}
