using BenchmarkDotNet.Attributes;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.Making;
using Materia.Formulation.Sections;

namespace Materia.Benchmarks;

/// <summary>What the section <c>process</c> adds to an evaluation of twelve lines: its own time lies between the two.</summary>
[MemoryDiagnoser]
public class ProcessBenchmarks
{
    private static readonly IReadOnlyList<EvaluationSection> Others = [.. EvaluationSections.All.Where(s => s != ProcessPlan.Section)];

    private Release release = null!;
    private NormalisedFormula formula = null!;
    private EvaluationInput shared = null!;

    [GlobalSetup]
    public void Load()
    {
        release = SeedCatalogue.Load();
        formula = Formulas.Normalise(Formulas.TwelveLines, release);
        shared = new EvaluationInput(formula, release, new EvaluationOptions());
        foreach (var section in Others)
        {
            _ = shared.Of(section);
        }
    }

    [Benchmark(Baseline = true)]
    public Evaluation AllButProcess() => Evaluator.Evaluate(formula, release, new EvaluationOptions { Sections = Others });

    [Benchmark]
    public Evaluation AllWithProcess() => Evaluator.Evaluate(formula, release, new EvaluationOptions());

    /// <summary>The plan alone, on results that the other sections have left.</summary>
    [Benchmark]
    public ProcessPlan ProcessOnSharedResults() => ProcessPlanner.Plan(shared);
}
