using Materia.Catalogue;
using Materia.Seed;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry;

/// <summary>The repository's own seed data as a release.</summary>
internal static class SeedCatalogue
{
    private static readonly Lazy<Release> Loaded = new(Load);

    public static Release Release => Loaded.Value;

    public static Ingredient Ingredient(string id) =>
        Release.FindIngredient(id) ?? throw new InvalidOperationException($"The seed data hold no {id}.");

    private static Release Load()
    {
        var seed = SeedReader.Read(Path.Combine(CheckFiles.Root(), "seed-data"));
        var content = seed.Content
            ?? throw new InvalidOperationException($"The seed data have faults: {string.Join("; ", seed.Faults.Take(5))}");
        return new Release(1, DateTimeOffset.UnixEpoch, "seed", content);
    }
}
