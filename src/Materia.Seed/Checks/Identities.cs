using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Ids of ingredients and sources: kebab case, the same as the file's name, the folder the same as the kind, none given twice.</summary>
internal static class Identities
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        Check(seed.Ingredients.Select(i => (i.Value.Id, i.Place)), SeedDirectory.Ingredients, depth: 3, faults);
        Check(seed.Sources.Select(s => (s.Value.Id, s.Place)), SeedDirectory.Sources, depth: 2, faults);
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            var kind = KebabCase<IngredientKind>.Word(ingredient.Kind);
            var folders = place.File.Path.Split('/');
            if (folders.Length == 3 && folders[1] != kind)
            {
                faults.Add(place.Member("kind"), $"kind \"{kind}\" in folder {folders[1]}; move the file to {folders[0]}/{kind} or correct the kind");
            }

            for (var i = 0; i < ingredient.Functions.Count; i++)
            {
                Form(ingredient.Functions[i].Function, place.Item("functions", i), faults);
            }
        }
    }

    private static void Check(IEnumerable<(string Id, Place Place)> records, string folder, int depth, FaultList faults)
    {
        var files = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (id, place) in records)
        {
            var at = place.Member("id");
            var path = place.File.Path;
            Form(id, at, faults);
            if (Path.GetFileNameWithoutExtension(path) != id)
            {
                faults.Add(at, $"id \"{id}\" in a file of another name; call the file {id}.json or correct the id");
            }

            if (path.Split('/').Length != depth)
            {
                faults.Add(at, depth == 3 ? $"the file belongs in {folder}/<kind>" : $"the file belongs in {folder}");
            }

            if (!files.TryAdd(id, path))
            {
                faults.Add(at, $"id \"{id}\" is that of {files[id]} too; give each record its own id");
            }
        }
    }

    private static void Form(string id, Place at, FaultList faults)
    {
        if (!KebabId.IsValid(id))
        {
            faults.Add(at, $"\"{id}\" is not in kebab case; use a-z, 0-9 and single hyphens between");
        }
    }
}
