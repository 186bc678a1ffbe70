namespace Materia.Api.Pages.Text;

/// <summary>
/// Names the resource file with the words of the pages. Another language is a file <c>PageText.fr.resx</c> beside it, its code among
/// <see cref="Languages"/>, and <c>PredefinedCulturesOnly</c> off in the build, since the service runs without the system's cultures.
/// </summary>
public sealed class PageText
{
    /// <summary>The languages that there are words for, the one to fall back on first.</summary>
    public static IReadOnlyList<string> Languages { get; } = ["en"];
}
