using BenchmarkDotNet.Attributes;
using Materia.Formulation.Neighbours;

namespace Materia.Benchmarks;

/// <summary>Neighbours of an ingredient, the release in memory and its vectors read.</summary>
[MemoryDiagnoser]
public class NeighbourBenchmarks
{
    private static readonly NeighbourFilter Usual = new();
    private NeighbourSearch search = null!;

    /// <summary>The ingredient asked for.</summary>
    [Params("cocoa-butter", "kaolin", "lavender-oil", "sodium-benzoate")]
    public string Id { get; set; } = "";

    /// <summary>Reads the vectors.</summary>
    [GlobalSetup]
    public void Read()
    {
        search = NeighbourSearch.Of(SeedCatalogue.Load());
        search.Find(Id, Usual);
    }

    /// <summary>The ten nearest, with their reasons, differences and warnings. Bar: 1 ms.</summary>
    [Benchmark]
    public NeighbourList TenNearest() => search.Find(Id, Usual);
}
