using Materia.Catalogue;

namespace Materia.Search;

/// <summary>What is searched for. Everything that is given must hold; within one list of values, one of them must.</summary>
public sealed record SearchRequest
{
    /// <summary>The greatest number of hits on one page.</summary>
    public const int GreatestLimit = 100;

    /// <summary>The greatest length of <see cref="Text"/> in UTF-16 code units.</summary>
    public const int LongestText = 200;

    /// <summary>The greatest number of words in <see cref="Text"/>.</summary>
    public const int MostWords = 12;

    /// <summary>
    /// Words of names, of any kind and language, or CAS or EC numbers with or without hyphens. All words must be found among the
    /// names of one ingredient; the last may be unfinished. Any characters are allowed; blank text asks for nothing.
    /// </summary>
    public string? Text { get; init; }

    /// <summary>Kinds, one of which it must be.</summary>
    public IReadOnlyList<IngredientKind> Kinds { get; init; } = [];

    /// <summary>Functions in the inventory's terms in kebab case, one of which it must have.</summary>
    public IReadOnlyList<string> Functions { get; init; } = [];

    /// <summary>Kingdoms, one of which it must come from.</summary>
    public IReadOnlyList<OriginKind> Origins { get; init; } = [];

    /// <summary>Charges in water, one of which it must carry.</summary>
    public IReadOnlyList<IonicCharge> Charges { get; init; } = [];

    /// <summary>Keys of substitution groups, of one of which it must be a member.</summary>
    public IReadOnlyList<string> Groups { get; init; } = [];

    /// <summary>Ranges of properties.</summary>
    public IReadOnlyDictionary<PropertyGroup, DecimalRange> Properties { get; init; } = new Dictionary<PropertyGroup, DecimalRange>();

    /// <summary>
    /// Ranges of the shares of fatty acids or alcohols [%], by symbol. A symbol without a position, such as <c>18:1</c>, asks for
    /// the sum of its isomers; one isomer, such as <c>18:1n-9</c>, is answered by the undifferentiated share where the profile
    /// doesn't tell isomers apart.
    /// </summary>
    public IReadOnlyDictionary<string, DecimalRange> Acids { get; init; } = new Dictionary<string, DecimalRange>();

    /// <summary>When a stored range answers.</summary>
    public RangeMatch RangeMatch { get; init; }

    /// <summary>The order of the hits; by relevance, which without <see cref="Text"/> is by name.</summary>
    public SearchSort Sort { get; init; }

    /// <summary>How many hits to give at most, 1 to <see cref="GreatestLimit"/>.</summary>
    public int Limit { get; init; } = 20;

    /// <summary>The <see cref="SearchPage.Next"/> of the page before; <see langword="null"/> for the first page.</summary>
    public string? After { get; init; }
}
