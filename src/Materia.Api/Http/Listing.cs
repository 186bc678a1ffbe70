namespace Materia.Api.Http;

/// <summary>A whole table.</summary>
/// <typeparam name="T">What its rows are.</typeparam>
public sealed record Listing<T>
{
    /// <summary>How many there are.</summary>
    public required int Total { get; init; }

    /// <summary>All of them.</summary>
    public required IReadOnlyList<T> Items { get; init; }

    /// <summary>Lists <paramref name="items"/>.</summary>
    public static Listing<T> Of(IReadOnlyList<T> items) => new() { Total = items.Count, Items = items };
}
