using Materia.Catalogue.Inventory;

namespace Materia.Search.Inventory;

/// <summary>What a search of the inventory found.</summary>
public sealed record InventoryPage
{
    /// <summary>What is wrong with the request; nothing was searched then.</summary>
    public IReadOnlyList<SearchFault> Faults { get; init; } = [];

    /// <summary>How many entries match, on all pages together.</summary>
    public int Total { get; init; }

    /// <summary>The entries of this page: by how well they match, and by name where no text was given.</summary>
    public IReadOnlyList<InventoryEntry> Entries { get; init; } = [];

    /// <summary>False when typing errors had to be forgiven to find anything.</summary>
    public bool AsTyped { get; init; } = true;

    /// <summary>The cursor of the next page; <see langword="null"/> on the last.</summary>
    public string? Next { get; init; }
}
