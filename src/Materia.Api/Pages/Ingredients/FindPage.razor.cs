using Materia.Api.Ingredients;
using Materia.Api.Serving;
using Materia.Search;
using Microsoft.AspNetCore.Components;

namespace Materia.Api.Pages.Ingredients;

/// <summary>The search, with facets and ranges of properties.</summary>
public partial class FindPage
{
    /// <summary>The request.</summary>
    [CascadingParameter]
    public HttpContext Context { get; set; } = null!;

    /// <summary>The release.</summary>
    [Inject]
    public required ServedRelease Served { get; set; }

    private FindQuery Query { get; set; } = null!;

    private SearchPage Page { get; set; } = new();

    private IReadOnlyList<string> Problems { get; set; } = [];

    private string Heading => Page.Total == 0
        ? T["search.none"]
        : Page.Hits.Count == Page.Total ? T["search.all", Page.Total] : T["search.some", Query.Seen + 1, Query.Seen + Page.Hits.Count, Page.Total];

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Query = FindQuery.Read(Context.Request.Query);
        if (!Query.Faults.Any)
        {
            Page = Served.Index.Search(Query.Request);
            IngredientQuery.Note(Page.Faults, Query.Faults);
        }

        Problems = [.. Query.Faults.ByKey().SelectMany(f => f.Value)];
        if (Problems.Count > 0)
        {
            Context.Response.StatusCode = StatusCodes.Status400BadRequest;
        }
    }

    private string SortName(string word)
    {
        var descending = word.StartsWith('-');
        string name = T["sort." + word.TrimStart('-')];
        return word is "relevance" or "name" or "-name" ? (descending ? T["sort.nameDown"] : name) : T[descending ? "sort.down" : "sort.up", name];
    }
}
