using Materia.Api.Serving;
using Materia.Formulation;
using Materia.Search;
using Microsoft.AspNetCore.Components;

namespace Materia.Api.Pages.Formulas;

/// <summary>The bench: a formula that lives in the address, with everything that it comes to.</summary>
public partial class FormulaPage
{
    private const int Offered = 8;

    /// <summary>The request.</summary>
    [CascadingParameter]
    public HttpContext Context { get; set; } = null!;

    /// <summary>The release.</summary>
    [Inject]
    public required ServedRelease Served { get; set; }

    /// <summary>The clock, whose day decides which rules are in force.</summary>
    [Inject]
    public required TimeProvider Time { get; set; }

    private FormulaState State { get; set; } = null!;

    private string Link { get; set; } = "";

    private string? Search { get; set; }

    private IReadOnlyList<Suggestion> Choices { get; set; } = [];

    private IReadOnlyList<string> Unread { get; set; } = [];

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        var query = Context.Request.Query;
        State = FormulaState.Read(query["f"], Served, DateOnly.FromDateTime(Time.GetUtcNow().UtcDateTime));
        if (query["add"].FirstOrDefault() is { Length: > 0 and <= 100 } add && Served.Release.FindIngredient(add) is not null)
        {
            Context.Response.Redirect(FormulaLink.Url(State.Formula with { Lines = [.. State.Formula.Lines, new FormulaLine { Ingredient = add }] }));
            return;
        }

        Link = FormulaLink.Encode(State.Formula);
        Search = query["find"].FirstOrDefault() is { Length: > 0 and <= SearchRequest.LongestText } search ? search : null;
        Choices = Search is null ? [] : Served.Index.Suggest(Search, Offered);
        Unread = [.. query["unread"].ToString().Split(',', StringSplitOptions.RemoveEmptyEntries).Take(20)];
    }

    private string NameOf(FormulaLine line) =>
        line.Name ?? line.Own?.Name ?? (line.Ingredient is { } id ? Served.Release.FindIngredient(id)?.CommonName() ?? id : "?");

    private string FieldName(string field) =>
        field.StartsWith("percent-", StringComparison.Ordinal) && int.TryParse(field[8..], out var line) && line < State.Formula.Lines.Count
            ? NameOf(State.Formula.Lines[line])
            : T["field." + field];
}
