using Materia.Api.Http;
using Materia.Api.Ingredients;
using Materia.Search;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;

namespace Materia.Api.Pages.Ingredients;

/// <summary>
/// Reads the query of the search page. A form without script has one field for each end of a range (<c>meltingFrom</c>,
/// <c>meltingTo</c>); these become the ranges that the call takes, and both are then read alike. What the page does not know it leaves alone.
/// </summary>
public sealed class FindQuery
{
    private const int Shown = 20;

    private static readonly string[] Lists = ["kind", "function", "origin", "excludeOrigin", "excludeAllergen", "charge", "group", "acid"];
    private static readonly string[] Singles = ["text", "rangeMatch", "sort", "after"];
    private readonly IQueryCollection query;

    private FindQuery(IQueryCollection query, SearchRequest request, RequestFaults faults)
    {
        this.query = query;
        Request = request;
        Faults = faults;
    }

    /// <summary>What is searched for.</summary>
    public SearchRequest Request { get; }

    /// <summary>What cannot be read.</summary>
    public RequestFaults Faults { get; }

    /// <summary>How many hits the pages before this one had.</summary>
    public int Seen => int.TryParse(query["seen"], out var seen) && seen is > 0 and < 1_000_000 ? seen : 0;

    /// <summary>Whether anything but words is asked for.</summary>
    public bool Filters => Request.Properties.Count > 0 || Lists.Any(l => !StringValues.IsNullOrEmpty(query[l]));

    /// <summary>Reads a query.</summary>
    public static FindQuery Read(IQueryCollection query)
    {
        var call = new Dictionary<string, StringValues>(StringComparer.Ordinal);
        foreach (var name in Singles.Concat(Lists).Where(query.ContainsKey))
        {
            call[name] = query[name];
        }

        foreach (var name in PropertyGroups.All.Select(g => g.Name()))
        {
            var (low, high) = (Single(query, name + "From"), Single(query, name + "To"));
            if (low.Length + high.Length > 0)
            {
                call[name] = $"{low}..{high}";
            }
        }

        var faults = new RequestFaults();
        var request = IngredientQuery.Read(new QueryCollection(call), faults);
        return new(query, request with { Limit = Shown }, faults);
    }

    /// <summary>What stands in a field.</summary>
    public string Value(string name) => Single(query, name);

    /// <summary>Whether a value of a list is ticked.</summary>
    public bool Has(string name, string value) => query[name].Contains(value);

    /// <summary>The values of a list that are ticked.</summary>
    public IEnumerable<string> Ticked(string name) => query[name].OfType<string>().Where(v => v.Length is > 0 and <= 60).Distinct(StringComparer.Ordinal).Take(50);

    /// <summary>The address of the next page.</summary>
    public string Next(string cursor) => Address(("after", cursor), ("seen", (Seen + Request.Limit).ToString(System.Globalization.CultureInfo.InvariantCulture)));

    /// <summary>The address of the first page.</summary>
    public string First() => Address();

    private string Address(params (string Name, string? Value)[] more)
    {
        var kept = query
            .Where(p => p.Key is not ("after" or "seen"))
            .SelectMany(p => p.Value.Where(v => !string.IsNullOrEmpty(v)).Select(v => KeyValuePair.Create(p.Key, v)))
            .Concat(more.Select(m => KeyValuePair.Create(m.Name, m.Value)));
        return QueryHelpers.AddQueryString("/ingredients", kept);
    }

    private static string Single(IQueryCollection query, string name) => query[name] is { Count: > 0 } values ? (values[0] ?? "").Trim() : "";
}
