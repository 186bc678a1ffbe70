using Materia.Seed.Reporting;

namespace Materia.Seed.Cli;

/// <summary>Reports on the data.</summary>
internal static class ReportCommand
{
    /// <summary>Prints the report, as text or as JSON; data with faults is not reported on.</summary>
    public static async Task<int> RunAsync(Arguments arguments, TextWriter output, TextWriter error)
    {
        var result = SeedReader.Read(arguments.Directory);
        if (result.Content is not { } content)
        {
            return SeedCommand.PrintFaults(result.Faults, output, error);
        }

        var report = CatalogueReport.Of(content);
        await output.WriteAsync(arguments.Json ? ReportJson.Write(report) : ReportText.Write(report));
        return ExitCode.Done;
    }
}
