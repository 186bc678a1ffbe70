using Materia.Api.Serving;
using Materia.Search;
using Materia.Search.Inventory;

namespace Materia.Api.Inventory;

/// <summary>The entries of the official inventory that a text names and that no curated ingredient stands for: the second tier of a search.</summary>
public sealed record InventoryTier
{
    private const int MostShown = 5;

    /// <summary>How many entries match, curated ones included; <c>GET /v1/inventory</c> lists all.</summary>
    public required int Total { get; init; }

    /// <summary>The first of those that are not curated.</summary>
    public required IReadOnlyList<InventoryItem> Items { get; init; }

    /// <summary>
    /// Looks the text of a search up; <see langword="null"/> where no inventory is held, nothing is found, or the search asks for
    /// more than names, of which the inventory knows nothing.
    /// </summary>
    /// <param name="request">The search.</param>
    /// <param name="page">What it found among the curated ingredients.</param>
    /// <param name="served">The release served, with the inventory.</param>
    public static InventoryTier? Of(SearchRequest request, SearchPage page, ServedRelease served)
    {
        if (served.Inventory is not { } inventory || string.IsNullOrWhiteSpace(request.Text) || request.After is not null || !AsksForNamesOnly(request))
        {
            return null;
        }

        var found = inventory.Index.Search(new InventoryRequest { Text = request.Text, Limit = SearchRequest.GreatestLimit });

        // A guess in the inventory is of no use beside a curated ingredient that was found.
        if (!found.AsTyped && page.Total > 0)
        {
            return null;
        }

        var items = found.Entries.Where(e => inventory.Links.WithName(e).Count == 0).Take(MostShown).Select(e => InventoryItem.Of(e, inventory)).ToList();
        return items.Count == 0 ? null : new InventoryTier { Total = found.Total, Items = items };
    }

    private static bool AsksForNamesOnly(SearchRequest request) =>
        request.Kinds.Count == 0 && request.Functions.Count == 0 && request.Origins.Count == 0 && request.Properties.Count == 0 && request.Acids.Count == 0;
}
