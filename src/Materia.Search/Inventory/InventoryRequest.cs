namespace Materia.Search.Inventory;

/// <summary>What is searched for in the inventory of names. Everything that is given must hold.</summary>
public sealed record InventoryRequest
{
    /// <summary>Words of names, or CAS or EC numbers, as in <see cref="SearchRequest.Text"/>; blank text asks for all entries.</summary>
    public string? Text { get; init; }

    /// <summary>Functions in kebab case, one of which the entry must have.</summary>
    public IReadOnlyList<string> Functions { get; init; } = [];

    /// <summary>How many entries to give at most, 1 to <see cref="SearchRequest.GreatestLimit"/>.</summary>
    public int Limit { get; init; } = 20;

    /// <summary>The <see cref="InventoryPage.Next"/> of the page before; <see langword="null"/> for the first page.</summary>
    public string? After { get; init; }
}
