using Materia.Catalogue;

namespace Materia.Seed;

/// <summary>What reading a seed directory gave: the whole content, or every fault found.</summary>
public sealed record SeedResult
{
    /// <summary>The content; <see langword="null"/> when there is any fault.</summary>
    public CatalogueContent? Content { get; init; }

    /// <summary>The faults, by file and line; empty when the content is given.</summary>
    public IReadOnlyList<SeedFault> Faults { get; init; } = [];
}
