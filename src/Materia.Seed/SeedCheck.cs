using Materia.Seed.Formatting;
using Materia.Seed.Schema;

namespace Materia.Seed;

/// <summary>Everything that a seed directory must satisfy before it is committed.</summary>
public static class SeedCheck
{
    /// <summary>
    /// The faults of <see cref="SeedReader.Read"/>, and besides them files that are not in canonical form and schemas that are
    /// out of date: those matter to people who edit the data, not to a server that loads it.
    /// </summary>
    public static IReadOnlyList<SeedFault> Run(string directory)
    {
        // The layout is looked at beside the content: both read every file and neither needs the other.
        var layout = Task.Run(() => SeedFormatter.Check(directory));
        var content = SeedReader.Read(directory).Faults;
        return [.. content, .. layout.GetAwaiter().GetResult(), .. SeedSchema.Check(directory)];
    }
}
