using Materia.Catalogue;
using Materia.Search.Ranges;

namespace Materia.Search.Querying;

/// <summary>Finds what is wrong with a request, before anything is searched.</summary>
internal static class RequestCheck
{
    /// <summary>All faults but the cursor's, which <see cref="Cursors.PageCursor"/> finds.</summary>
    public static IEnumerable<SearchFault> Faults(SearchRequest request, Release release) =>
        TextFaults(request.Text ?? "")
            .Concat(request.Properties.SelectMany(p => RangeFaults(p.Key.Name(), p.Value)))
            .Concat(request.Acids.SelectMany(a => AcidFaults(a.Key, a.Value, release)))
            .Concat(SortFaults(request.Sort))
            .Concat(LimitFaults(request.Limit));

    private static IEnumerable<SearchFault> TextFaults(string text)
    {
        if (text.Length > SearchRequest.LongestText)
        {
            yield return new("text", $"The text has {text.Length} characters; shorten it to {SearchRequest.LongestText}.");
        }
        else if (TextQuery.AllWords(text).Count is var count and > SearchRequest.MostWords)
        {
            yield return new("text", $"The text has {count} words; shorten it to {SearchRequest.MostWords}.");
        }
    }

    private static IEnumerable<SearchFault> AcidFaults(string symbol, DecimalRange range, Release release)
    {
        if (AskedAcid.Find(release, symbol) is null)
        {
            yield return new("acid", $"No fatty acid has the symbol `{Shown(symbol)}`; use one of the fatty-acid table, such as `18:1n-9`.");
        }

        foreach (var fault in RangeFaults("acid", range))
        {
            yield return fault;
        }
    }

    private static IEnumerable<SearchFault> RangeFaults(string member, DecimalRange range)
    {
        if (range.IsReversed)
        {
            yield return new(member, $"The range {range} ends below its start; write the lower number first.");
        }
        else if (range is { Low: null, High: null })
        {
            yield return new(member, "The range is open at both ends and leaves nothing out; give it an end or leave it away.");
        }
    }

    private static IEnumerable<SearchFault> SortFaults(SearchSort sort)
    {
        if (!sort.IsValid)
        {
            yield return new("sort", $"Hits can't be sorted by `{sort}`; use one of {string.Join(", ", SearchSort.Words)}.");
        }
    }

    private static IEnumerable<SearchFault> LimitFaults(int limit)
    {
        if (limit is < 1 or > SearchRequest.GreatestLimit)
        {
            yield return new("limit", $"The limit is {limit}; use 1 to {SearchRequest.GreatestLimit}.");
        }
    }

    private static string Shown(string symbol) => symbol.Length <= 40 ? symbol : symbol[..40] + "…";
}
