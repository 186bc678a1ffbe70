using BenchmarkDotNet.Attributes;
using Materia.Search;

namespace Materia.Benchmarks;

/// <summary>Searches over the seed catalogue.</summary>
[MemoryDiagnoser]
public class SearchBenchmarks
{
    private readonly SearchRequest wordsAndRange = new()
    {
        Text = "seed oil",
        Properties = new Dictionary<PropertyGroup, DecimalRange> { [PropertyGroup.Iodine] = new(80, 140) },
    };

    private readonly SearchRequest misspelt = new() { Text = "shae buter" };
    private IngredientIndex index = null!;

    [GlobalSetup]
    public void Build() => index = IngredientIndex.Build(SeedCatalogue.Load());

    [GlobalCleanup]
    public void Close() => index.Dispose();

    [Benchmark(Baseline = true)]
    public SearchPage TwoWordsAndRange() => index.Search(wordsAndRange);

    [Benchmark]
    public SearchPage Misspelt() => index.Search(misspelt);

    [Benchmark]
    public IReadOnlyList<Suggestion> Suggest() => index.Suggest("she", 10);
}
