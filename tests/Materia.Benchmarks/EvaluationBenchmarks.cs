using BenchmarkDotNet.Attributes;
using Materia.Catalogue;
using Materia.Formulation;

namespace Materia.Benchmarks;

/// <summary>One evaluation of twelve lines, all sections.</summary>
[MemoryDiagnoser]
public class EvaluationBenchmarks
{
    private Release release = null!;
    private NormalisedFormula formula = null!;

    [GlobalSetup]
    public void Load()
    {
        release = SeedCatalogue.Load();
        formula = Formulas.Normalise(Formulas.TwelveLines, release);
        _ = Evaluate();
    }

    [Benchmark]
    public Evaluation Evaluate() => Evaluator.Evaluate(formula, release, new EvaluationOptions());
}
