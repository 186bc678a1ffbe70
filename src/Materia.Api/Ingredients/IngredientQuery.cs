using Materia.Api.Http;
using Materia.Catalogue;
using Materia.Search;

namespace Materia.Api.Ingredients;

/// <summary>Reads the query string of an ingredient search.</summary>
public static class IngredientQuery
{
    /// <summary>The request that <paramref name="query"/> asks for; what cannot be read is noted in <paramref name="faults"/>.</summary>
    public static SearchRequest Read(IQueryCollection query, RequestFaults faults)
    {
        var reader = new QueryReader(query, faults);
        return new()
        {
            Text = reader.Text("text", SearchRequest.LongestText),
            Kinds = reader.Words<IngredientKind>("kind"),
            Functions = reader.All("function"),
            Origins = reader.Words<OriginKind>("origin"),
            Charges = reader.Words<IonicCharge>("charge"),
            Groups = reader.All("group"),
            Properties = Properties(reader, faults),
            Acids = Acids(reader, faults),
            RangeMatch = reader.Word<RangeMatch>("rangeMatch"),
            Sort = Sort(reader, faults),
            Limit = reader.Whole("limit", 1, SearchRequest.GreatestLimit, IngredientQueryParameters.UsualLimit),
            After = reader.Text("after", longest: 1000),
        };
    }

    /// <summary>Passes on what the search itself finds wrong.</summary>
    public static void Note(IEnumerable<SearchFault> found, RequestFaults faults)
    {
        foreach (var fault in found)
        {
            faults.Add("?" + fault.Member, fault.Message);
        }
    }

    private static Dictionary<PropertyGroup, DecimalRange> Properties(QueryReader reader, RequestFaults faults)
    {
        var ranges = new Dictionary<PropertyGroup, DecimalRange>();
        foreach (var group in PropertyGroups.All)
        {
            if (reader.Text(group.Name()) is { } text && Range(group.Name(), text, faults) is { } range)
            {
                ranges.Add(group, range);
            }
        }

        return ranges;
    }

    private static Dictionary<string, DecimalRange> Acids(QueryReader reader, RequestFaults faults)
    {
        var ranges = new Dictionary<string, DecimalRange>(StringComparer.Ordinal);
        foreach (var text in reader.All("acid"))
        {
            // The symbol has colons of its own (18:1n-9), so the last one parts it from the range.
            var colon = text.LastIndexOf(':');
            var symbol = colon < 0 ? text : text[..colon];
            if (colon < 0 || !text.Contains("..", StringComparison.Ordinal))
            {
                faults.Add("?acid", $"'{text}' is not an acid with a range; write symbol:low..high, such as 18:1n-9:40.. for at least 40 % oleic acid.");
            }
            else if (Range("acid", text[(colon + 1)..], faults) is { } range && !ranges.TryAdd(symbol, range))
            {
                faults.Add("?acid", $"{symbol} stands twice; give it one range.");
            }
        }

        return ranges;
    }

    private static DecimalRange? Range(string name, string text, RequestFaults faults)
    {
        if (DecimalRange.TryParse(text, out var range))
        {
            return range;
        }

        faults.Add("?" + name, $"'{text}' is not a range; write low..high with a decimal point, either end open: 28..36, 28.5.. or ..36.");
        return null;
    }

    private static SearchSort Sort(QueryReader reader, RequestFaults faults)
    {
        if (reader.Text("sort") is not { } text)
        {
            return default;
        }

        if (SearchSort.TryParse(text, out var sort))
        {
            return sort;
        }

        faults.Add("?sort", $"Hits cannot be sorted by '{text}'; sort is one of {string.Join(", ", SearchSort.Words)}.");
        return default;
    }
}
