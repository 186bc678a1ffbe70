using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>
/// No two ingredients share a common name or a synonym, whatever its case and its hyphens or blanks. INCI, botanical and
/// chemical names may be shared: several qualities of one plant often are listed under one name.
/// </summary>
internal static class DuplicateNames
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var first = new Dictionary<string, (string Id, Place Place)>(StringComparer.Ordinal);
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            foreach (var (name, at) in Statements.Items(ingredient.Names, place, "names"))
            {
                if (name.Kind is not (NameKind.Common or NameKind.Synonym))
                {
                    continue;
                }

                var owner = (ingredient.Id, at);
                if (!first.TryAdd(Fold(name.Text), owner))
                {
                    var (id, other) = first[Fold(name.Text)];
                    if (id != ingredient.Id)
                    {
                        faults.Add(at, $"\"{name.Text}\" is a name of {id} too ({other.File.Path}:{other.Line}); keep it on one of the two");
                    }
                }
            }
        }
    }

    private static string Fold(string text)
    {
        var words = text.ToUpperInvariant().Split([' ', '-', '\u2010', '\u2011', '\'', '\u2019'], StringSplitOptions.RemoveEmptyEntries);
        return string.Join(' ', words);
    }
}
