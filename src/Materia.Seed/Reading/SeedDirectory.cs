namespace Materia.Seed.Reading;

/// <summary>The layout of a seed directory.</summary>
internal static class SeedDirectory
{
    /// <summary>The folder of the ingredients, one folder in it for each kind.</summary>
    public const string Ingredients = "ingredients";

    /// <summary>The folder of the sources.</summary>
    public const string Sources = "sources";

    /// <summary>The folder of the tables.</summary>
    public const string Tables = "tables";

    /// <summary>The folder of the schemas.</summary>
    public const string Schema = "schema";

    private const string JsonExtension = ".json";

    /// <summary>
    /// Opens the JSON files below <paramref name="folder"/>, in ordinal order of their paths. A folder that is missing and a
    /// file that is no JSON are faults: nothing that a curator put there is passed over in silence.
    /// </summary>
    public static IEnumerable<JsonFile> Files(string directory, string folder, FaultList faults)
    {
        foreach (var path in Paths(directory, folder, faults))
        {
            if (path.EndsWith(JsonExtension, StringComparison.Ordinal))
            {
                yield return new JsonFile(path, File.ReadAllBytes(Path.Combine(directory, path)));
            }
            else
            {
                faults.Add(path, null, "only .json files belong here; rename or remove the file");
            }
        }
    }

    /// <summary>The files below <paramref name="folder"/>, relative to the seed directory with forward slashes, in ordinal order.</summary>
    public static IReadOnlyList<string> Paths(string directory, string folder, FaultList faults)
    {
        var root = Path.Combine(directory, folder);
        if (!Directory.Exists(root))
        {
            faults.Add(folder, null, $"there is no folder {folder} in {directory}; name the directory that holds the seed data");
            return [];
        }

        return
        [
            .. Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(directory, file).Replace(Path.DirectorySeparatorChar, '/'))
                .Order(StringComparer.Ordinal),
        ];
    }
}
