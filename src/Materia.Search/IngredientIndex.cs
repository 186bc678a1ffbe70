using Materia.Catalogue;
using Materia.Search.Cursors;
using Materia.Search.Facets;
using Materia.Search.Indexing;
using Materia.Search.Querying;
using Materia.Search.Sorting;
using Materia.Search.Suggesting;

namespace Materia.Search;

/// <summary>
/// The search over one release, built once and immutable; any number of threads may search at once. It holds memory only, so a
/// node that swaps releases can let the old index go without disposing it, and requests still working on it are not disturbed.
/// </summary>
public sealed class IngredientIndex : IDisposable
{
    private const int MostNearNames = 5;

    private readonly Release release;
    private readonly NameTable names;
    private readonly NameIndex index;
    private readonly TextMatcher matcher;
    private readonly NearestNames nearest;
    private readonly IngredientColumns columns;
    private readonly FacetCounter facets;
    private readonly SortOrders orders;

    private IngredientIndex(Release release, IReadOnlyList<Ingredient> ingredients)
    {
        this.release = release;

        // Working the computed figures out and writing the names take about as long and need nothing of each other.
        var computed = Task.Run(() => new ComputedColumns(ingredients, release));
        (names, index) = NameIndexWriter.Build([.. ingredients.Select(NamedRecord.Of)], withPairs: true);
        matcher = new TextMatcher(names, index);
        nearest = new NearestNames(names, index);
        columns = new IngredientColumns(ingredients, computed.GetAwaiter().GetResult());
        facets = new FacetCounter(columns);
        orders = new SortOrders(ingredients, columns);
    }

    /// <summary>Builds the index of a release.</summary>
    public static IngredientIndex Build(Release release) => new(release, [.. release.Content.Ingredients.OrderBy(i => i.Id, StringComparer.Ordinal)]);

    /// <summary>Searches. A faulty request gives a page that holds its faults and nothing else; nothing a user types throws.</summary>
    public SearchPage Search(SearchRequest request)
    {
        var faults = RequestCheck.Faults(request, release).ToList();
        var fingerprint = RequestFingerprint.Of(request);
        var lastId = "";
        if (request.After is { } after && PageCursor.Read(after, release, fingerprint, out lastId) is { } fault)
        {
            faults.Add(fault);
        }

        if (faults.Count > 0)
        {
            return new SearchPage { Faults = faults };
        }

        var match = string.IsNullOrWhiteSpace(request.Text) ? null : matcher.Match(TextQuery.Of(request.Text));
        var filter = new IngredientFilter(request, release, columns);
        var found = Ordered(request.Sort, match, filter);
        var start = lastId.Length == 0 ? 0 : found.FindIndex(i => names.Ids[i] == lastId) + 1;
        var page = found.GetRange(start, Math.Min(request.Limit, found.Count - start));
        return new SearchPage
        {
            Total = found.Count,
            Hits = [.. page.Select(i => Hit(i, match, filter))],
            Facets = facets.Count(found),
            DidYouMean = match is null or { AsTyped: true } ? [] : [.. nearest.Find(match).Select(Suggestion).DistinctBy(s => s.Text, StringComparer.OrdinalIgnoreCase).Take(MostNearNames)],
            Next = start + page.Count < found.Count ? PageCursor.Write(release, fingerprint, names.Ids[page[^1]]) : null,
        };
    }

    /// <summary>
    /// Completes what is being typed: the best name of each ingredient that the text matches, the last word unfinished, best first.
    /// Text beyond the limits of <see cref="SearchRequest"/> is cut off; a limit below 1 gives nothing.
    /// </summary>
    public IReadOnlyList<Suggestion> Suggest(string text, int limit) =>
        [.. matcher.Match(TextQuery.Of(text)).Ranked.OrderBy(r => r.Rank).Take(limit).Select(r => Suggestion(r.Name))];

    /// <summary>
    /// The ids that an unknown one was likely meant to be, the likeliest first, by the spelling of ids and names; empty when nothing
    /// is near. Limits as in <see cref="Suggest"/>.
    /// </summary>
    public IReadOnlyList<string> NearestIds(string text, int limit) =>
        [.. nearest.Find(matcher.Match(TextQuery.Of(text))).Take(limit).Select(n => Suggestion(n).IngredientId)];

    /// <summary>Gives the memory back; searching afterwards throws <see cref="ObjectDisposedException"/>.</summary>
    public void Dispose() => index.Dispose();

    private List<int> Ordered(SearchSort sort, TextMatch? match, IngredientFilter filter)
    {
        if (match is not null && sort.By == SortKey.Relevance)
        {
            return [.. match.Ranked.Where(r => filter.Accepts(r.Ingredient)).OrderBy(r => r.Rank).Select(r => r.Ingredient)];
        }

        var places = orders.Places(sort);
        var candidates = match?.Ranked.Select(r => r.Ingredient) ?? Enumerable.Range(0, names.Ids.Count);
        return [.. candidates.Where(filter.Accepts).OrderBy(i => places[i])];
    }

    private SearchHit Hit(int ingredient, TextMatch? match, IngredientFilter filter) =>
        new(names.Ids[ingredient], new Matched
        {
            Names = match is null ? [] : MatchedNames.Of(ingredient, names, match),
            Figures = filter.Figures(ingredient),
            Shares = filter.Shares(ingredient),
        });

    private Suggestion Suggestion(int name)
    {
        var (ingredient, text, kind, language, _) = names.Names[name];
        return new Suggestion(text, names.Ids[ingredient], kind, language);
    }
}
