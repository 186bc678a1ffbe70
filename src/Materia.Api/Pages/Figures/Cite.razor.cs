using Materia.Catalogue;
using Microsoft.AspNetCore.Components;

namespace Materia.Api.Pages.Figures;

/// <summary>The grade of a statement as a link to its source; the source in full shows when it is pointed at or focused, and in print.</summary>
public partial class Cite
{
    private Source? work;
    private string id = "";

    /// <summary>A statement of the catalogue.</summary>
    [Parameter]
    public Statement? Of { get; set; }

    /// <summary>The grade, where there is no statement.</summary>
    [Parameter]
    public Evidence Evidence { get; set; }

    /// <summary>The key of the source.</summary>
    [Parameter]
    public string Source { get; set; } = "";

    /// <summary>Where in the source.</summary>
    [Parameter]
    public string? Locator { get; set; }

    /// <summary>The key of the work to look a recalled statement up in.</summary>
    [Parameter]
    public string? CheckIn { get; set; }

    /// <summary>What a reader must know.</summary>
    [Parameter]
    public string? Note { get; set; }

    /// <summary>Counts the citations of a page, so that each has an id of its own.</summary>
    [Inject]
    public required CiteNumbers Numbers { get; set; }

    private string Grade => KebabCase<Evidence>.Word(Evidence);

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (Of is { } statement)
        {
            (Evidence, Source, Locator, CheckIn, Note) = (statement.Evidence, statement.Source, statement.Locator, statement.CheckIn, statement.Note);
        }

        work = Served.Release.FindSource(Source);
        id = Numbers.Next();
    }
}
