using Materia.Api.Pages.Formulas;

namespace Materia.Api.Tests.Pages;

/// <summary>Addresses of formulas that the pages offer.</summary>
internal static class ExampleLink
{
    public static string Mask { get; } = FormulaLink.Url(ExampleFormulas.Mask);
}
