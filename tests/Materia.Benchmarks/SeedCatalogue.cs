using Materia.Catalogue;
using Materia.Seed;

namespace Materia.Benchmarks;

/// <summary>The seed catalogue, read from the repository.</summary>
internal static class SeedCatalogue
{
    public static Release Load()
    {
        var directory = new DirectoryInfo(AppContext.BaseDirectory);
        while (directory is not null && !File.Exists(Path.Combine(directory.FullName, "Materia.sln")))
        {
            directory = directory.Parent;
        }

        var root = directory?.FullName ?? throw new DirectoryNotFoundException("Run the measurements inside a checkout.");
        var content = SeedReader.Read(Path.Combine(root, "seed-data")).Content ?? throw new InvalidDataException("The seed data has faults; run the check.");
        return new Release(1, DateTimeOffset.UnixEpoch, CatalogueJson.Checksum(content), content);
    }
}
