using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Contents;

/// <summary>The keys by which rules and materials are brought together: CAS numbers, INCI names in capitals and ids, which never look alike.</summary>
internal static class ContentKeys
{
    /// <summary>The keys of an ingredient; the numbers and names of a mixture are those of its parts.</summary>
    public static IReadOnlyList<string> Of(Ingredient ingredient) => ingredient.Parts.Count > 0
        ? [Id(ingredient.Id)]
        :
        [
            Id(ingredient.Id),
            .. ingredient.Numbers.Where(n => n.Registry == Registry.Cas).Select(n => n.Number),
            .. ingredient.Names.Where(n => n.Kind == NameKind.Inci).Select(n => n.Text.ToUpperInvariant()),
        ];

    /// <summary>The keys of what is known by a name and perhaps a number.</summary>
    public static IReadOnlyList<string> Of(string name, string? cas) => cas is null ? [name.ToUpperInvariant()] : [name.ToUpperInvariant(), cas];

    /// <summary>The keys by which a member is looked up.</summary>
    public static IEnumerable<string> Of(RegulatedMember member)
    {
        if (member.Cas is { } cas)
        {
            yield return cas;
        }

        if (member.InciName is { } inci)
        {
            yield return inci.ToUpperInvariant();
        }

        if (member.Ingredient is { } id)
        {
            yield return Id(id);
        }
    }

    private static string Id(string id) => "id:" + id;
}
