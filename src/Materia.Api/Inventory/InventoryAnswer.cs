namespace Materia.Api.Inventory;

/// <summary>One page of the official inventory of names.</summary>
public sealed record InventoryAnswer
{
    /// <summary>How many entries match, on all pages together.</summary>
    public required int Total { get; init; }

    /// <summary>The entries of this page.</summary>
    public required IReadOnlyList<InventoryItem> Items { get; init; }

    /// <summary>When the inventory was imported; absent when none was.</summary>
    public DateTimeOffset? Imported { get; init; }

    /// <summary>What a reader must know: that none was imported, or that the entries match only with typing errors forgiven.</summary>
    public string? Note { get; init; }

    /// <summary>The cursor of the next page, for the parameter <c>after</c>; absent on the last. The Link header has the whole address.</summary>
    public string? Next { get; init; }
}
