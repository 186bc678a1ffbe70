using System.Diagnostics;
using System.Globalization;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.Substituting;
using Materia.Tests.Formulation.Substituting;

namespace Materia.Benchmarks;

/// <summary>
/// Substitutions measured: twenty formulas of ten lines over all fats of the catalogue (processor time of one search on one thread), and
/// a thousand generated requests of which none may be off 100 % or outside limits.
/// </summary>
internal static class SubstitutionRun
{
    private const int Formulas = 20;
    private const int UsualRequests = 1000;
    private static readonly DateOnly Day = new(2026, 11, 25);

    public static int Run(string[] args)
    {
        var release = SeedCatalogue.Load();
        var times = new List<(double Processor, double Wall)>();
        var candidates = release.Content.Ingredients.Count(i => i.Kind is IngredientKind.Butter or IngredientKind.Oil);
        Find(TenLines(release, 0), release);
        for (var i = 0; i < Formulas; i++)
        {
            times.Add(Find(TenLines(release, i), release));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{Formulas} formulas of 10 lines, {candidates} butters and oils: median {Median(times.Select(t => t.Processor)):0} ms processor, {Median(times.Select(t => t.Wall)):0} ms wall, slowest {times.Max(t => t.Processor):0} ms processor"));

        var requests = args is [var count] ? int.Parse(count, CultureInfo.InvariantCulture) : UsualRequests;
        var wrong = new List<string>();
        var proposals = 0;
        for (var seed = 0; seed < requests; seed++)
        {
            var request = GeneratedRequests.Of(seed, release);
            var (answer, faults) = SubstitutionFinder.Find(request, release, Day, TimeProvider.System, CancellationToken.None);
            proposals += answer?.Proposals.Count ?? 0;
            wrong.AddRange(answer is null ? faults.Select(f => $"{seed}: {f}") : GeneratedRequests.Wrong(request, answer, release, Day).Select(w => $"{seed}: {w}"));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{requests} generated requests, {proposals} proposals, {wrong.Count} wrong; working set {Environment.WorkingSet / 1_000_000} MB"));
        foreach (var line in wrong.Take(20))
        {
            Console.WriteLine(line);
        }

        return wrong.Count;
    }

    private static (double Processor, double Wall) Find(SubstitutionRequest request, Release release)
    {
        using var process = Process.GetCurrentProcess();
        var (before, watch) = (process.TotalProcessorTime, Stopwatch.StartNew());
        _ = SubstitutionFinder.Find(request, release, Day, TimeProvider.System, CancellationToken.None);
        process.Refresh();
        return ((process.TotalProcessorTime - before).TotalMilliseconds, watch.Elapsed.TotalMilliseconds);
    }

    /// <summary>A butter to do without, and nine lines taken in turn from the fats of the catalogue.</summary>
    private static SubstitutionRequest TenLines(Release release, int place)
    {
        var butters = release.Content.Ingredients.Where(i => i.Kind == IngredientKind.Butter).Select(i => i.Id).ToList();
        var oils = release.Content.Ingredients.Where(i => i.Kind == IngredientKind.Oil).Select(i => i.Id).ToList();
        string[] ids = [butters[place % butters.Count], butters[(place + 5) % butters.Count], butters[(place + 9) % butters.Count], .. Enumerable.Range(0, 4).Select(i => oils[((7 * place) + (11 * i)) % oils.Count]), "beeswax", "cetyl-alcohol", "kaolin"];
        decimal[] percents = [22, 12, 8, 15, 12, 10, 8, 5, 3, 5];
        return new SubstitutionRequest
        {
            Formula = new() { Lines = [.. ids.Select((id, i) => new FormulaLine { Ingredient = id, Percent = percents[i] })] },
            Without = [ids[0]],
            TimeBudget = 10,
        };
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }
}
