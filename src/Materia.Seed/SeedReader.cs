using Materia.Catalogue;
using Materia.Seed.Checks;
using Materia.Seed.Reading;

namespace Materia.Seed;

/// <summary>Reads a seed directory and checks it whole.</summary>
public static class SeedReader
{
    /// <summary>
    /// Reads all ingredients, sources and tables below <paramref name="directory"/> and checks them. Every fault of every file
    /// is reported; with any fault there is no content, so nothing can be half loaded. How a file is laid out and whether the
    /// schema is current is the business of <see cref="SeedCheck"/>.
    /// </summary>
    /// <param name="directory">The directory that holds <c>ingredients</c>, <c>sources</c> and <c>tables</c>.</param>
    public static SeedResult Read(string directory)
    {
        var faults = new FaultList();
        var seed = SeedLoader.Load(directory, faults);
        AllChecks.Run(seed, faults);
        return faults.IsEmpty
            ? new SeedResult { Content = Content(seed) }
            : new SeedResult { Faults = faults.Sorted() };
    }

    private static CatalogueContent Content(LoadedSeed seed) => new()
    {
        Ingredients = [.. seed.Ingredients.Select(i => i.Value).OrderBy(i => i.Id, StringComparer.Ordinal)],
        Sources = [.. seed.Sources.Select(s => s.Value).OrderBy(s => s.Id, StringComparer.Ordinal)],
        FattyAcids = [.. seed.FattyAcids.Select(a => a.Value)],
        Uses = [.. seed.Uses.Select(u => u.Value)],
        SubstitutionGroups = [.. seed.SubstitutionGroups.Select(g => g.Value)],
        Limits = seed.Regulation.WholeLimits(),
        Allergens = seed.Regulation.WholeAllergens(),
        Needs = seed.Needs.Whole(),
    };
}
