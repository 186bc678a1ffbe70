using System.Globalization;

namespace Materia.Api.Pages.Figures;

/// <summary>Counts the citations of one page.</summary>
public sealed class CiteNumbers
{
    private int last;

    /// <summary>An id that no other citation of the page has.</summary>
    public string Next() => string.Create(CultureInfo.InvariantCulture, $"cite-{++last}");
}
