using Materia.Catalogue;
using Materia.Seed.Tables;

namespace Materia.Seed.Reading;

/// <summary>Reads the files of a seed directory into records, without judging what they say.</summary>
internal static class SeedLoader
{
    /// <summary>Reads everything that can be read; what cannot is added to <paramref name="faults"/>.</summary>
    public static LoadedSeed Load(string directory, FaultList faults)
    {
        var ingredients = new List<Placed<Ingredient>>();
        var sources = new List<Placed<Source>>();
        var unreadSources = new HashSet<string>(StringComparer.Ordinal);
        var unreadIngredients = new HashSet<string>(StringComparer.Ordinal);
        foreach (var file in SeedDirectory.Files(directory, SeedDirectory.Ingredients, faults))
        {
            if (file.Read<Ingredient>(faults) is { } ingredient)
            {
                ingredients.Add(new(ingredient, new Place(file, "")));
            }
            else
            {
                unreadIngredients.Add(Path.GetFileNameWithoutExtension(file.Path));
            }
        }

        foreach (var file in SeedDirectory.Files(directory, SeedDirectory.Sources, faults))
        {
            if (file.Read<Source>(faults) is { } source)
            {
                sources.Add(new(source, new Place(file, "")));
            }
            else
            {
                unreadSources.Add(Path.GetFileNameWithoutExtension(file.Path));
            }
        }

        string[] tables = [FattyAcidTable.Path, UseTable.Path, SubstitutionGroupTable.Path, .. LoadedRegulation.Paths, .. LoadedNeeds.Paths];
        foreach (var stray in SeedDirectory.Paths(directory, SeedDirectory.Tables, faults).Except(tables, StringComparer.Ordinal))
        {
            faults.Add(stray, null, $"no table of that name is read; the tables are {string.Join(", ", tables)}");
        }

        var fattyAcids = TableFile.Read(directory, FattyAcidTable.Path, FattyAcidTable.Columns, FattyAcidTable.Row, faults);
        var uses = TableFile.Read(directory, UseTable.Path, UseTable.Columns, UseTable.Row, faults);
        var groups = TableFile.Read(directory, SubstitutionGroupTable.Path, SubstitutionGroupTable.Columns, SubstitutionGroupTable.Row, faults);
        var regulation = LoadedRegulation.Load(directory, faults);
        var needs = LoadedNeeds.Load(directory, faults);
        return new LoadedSeed
        {
            Ingredients = ingredients,
            Sources = sources,
            FattyAcids = fattyAcids.Rows,
            Uses = uses.Rows,
            SubstitutionGroups = groups.Rows,
            Regulation = regulation,
            Needs = needs,
            UnreadSources = unreadSources,
            IsComplete = unreadIngredients.Count == 0 && fattyAcids.IsComplete && uses.IsComplete && groups.IsComplete && regulation.IsComplete && needs.IsComplete,
            HasFattyAcids = fattyAcids.IsComplete,
            HasUses = uses.IsComplete,
            HasSubstitutionGroups = groups.IsComplete,
            UnreadIngredients = unreadIngredients,
        };
    }
}
