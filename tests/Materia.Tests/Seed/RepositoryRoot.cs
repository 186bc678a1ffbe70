namespace Materia.Tests.Seed;

/// <summary>The real seed data.</summary>
internal static class RepositoryRoot
{
    /// <summary>The repository's seed directory, found by walking up to the solution.</summary>
    public static string SeedData { get; } = Path.Combine(Find(AppContext.BaseDirectory), "seed-data");

    private static string Find(string directory) =>
        File.Exists(Path.Combine(directory, "Materia.sln"))
            ? directory
            : Find(Path.GetDirectoryName(directory) ?? throw new InvalidOperationException("The tests run outside the repository."));
}
