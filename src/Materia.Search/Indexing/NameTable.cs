using Materia.Catalogue;
using Materia.Search.Analysis;

namespace Materia.Search.Indexing;

/// <summary>All names and numbers of a release, those of one ingredient side by side, in the order of the ingredients.</summary>
internal sealed class NameTable
{
    private readonly int[] firstName;

    private NameTable(IReadOnlyList<Ingredient> ingredients, List<IndexedName> names, int[] firstName)
    {
        Ingredients = ingredients;
        Names = [.. names];
        this.firstName = firstName;
    }

    /// <summary>The ingredients; an ordinal is a place in this list, and the list is in the order of the ids.</summary>
    public IReadOnlyList<Ingredient> Ingredients { get; }

    /// <summary>The names, by document number.</summary>
    public IndexedName[] Names { get; }

    /// <summary>Lists the names of <paramref name="ingredients"/> and hands each with its words to <paramref name="index"/>.</summary>
    public static NameTable Build(IReadOnlyList<Ingredient> ingredients, Action<IndexedName, IReadOnlyList<Word>> index)
    {
        var names = new List<IndexedName>();
        var firstName = new int[ingredients.Count + 1];
        for (var ordinal = 0; ordinal < ingredients.Count; ordinal++)
        {
            foreach (var (text, kind, language) in NamesOf(ingredients[ordinal]))
            {
                var words = Wording.Of(text);
                var name = new IndexedName(ordinal, text, kind, language, Word.Join(words).Plain);
                names.Add(name);
                index(name, words);
            }

            firstName[ordinal + 1] = names.Count;
        }

        return new NameTable(ingredients, names, firstName);
    }

    /// <summary>The document numbers of an ingredient's names: from the first up to, not including, the second.</summary>
    public (int First, int End) Span(int ingredient) => (firstName[ingredient], firstName[ingredient + 1]);

    private static IEnumerable<(string Text, MatchedNameKind Kind, string? Language)> NamesOf(Ingredient ingredient) =>
        ingredient.Names.Select(n => (n.Text, Kind(n.Kind), n.Language))
            .Concat(ingredient.Numbers.Select(n => (n.Number, Kind(n.Registry), (string?)null)));

    private static MatchedNameKind Kind(NameKind kind) => kind switch
    {
        NameKind.Common => MatchedNameKind.Common,
        NameKind.Inci => MatchedNameKind.Inci,
        NameKind.Botanical => MatchedNameKind.Botanical,
        NameKind.Synonym => MatchedNameKind.Synonym,
        NameKind.Pharmacopoeia => MatchedNameKind.Pharmacopoeia,
        NameKind.Chemical => MatchedNameKind.Chemical,
        NameKind.Code => MatchedNameKind.Code,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A sort of name that the index does not know."),
    };

    private static MatchedNameKind Kind(Registry registry) => registry == Registry.Cas ? MatchedNameKind.Cas : MatchedNameKind.Ec;
}
