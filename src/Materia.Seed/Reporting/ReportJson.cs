using System.Text.Json;
using Materia.Catalogue;

namespace Materia.Seed.Reporting;

/// <summary>The report for programs.</summary>
internal static class ReportJson
{
    private static readonly JsonSerializerOptions Options = new(CatalogueJson.Options) { WriteIndented = true, NewLine = "\n" };

    /// <summary>The report as indented JSON, its last line ended.</summary>
    public static string Write(CatalogueReport report) => JsonSerializer.Serialize(report, Options) + "\n";
}
