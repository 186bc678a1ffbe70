namespace Materia.Search.Indexing;

/// <summary>One name or number of an ingredient; its place in <see cref="NameTable"/> is its document number in the index.</summary>
/// <param name="Ingredient">The ordinal of the ingredient, or of the entry of the inventory.</param>
/// <param name="Text">The name as it is written.</param>
/// <param name="Kind">What sort of name it is.</param>
/// <param name="Language">Its language as a BCP 47 tag, where it has one.</param>
/// <param name="Key">The folded name without its spaces, by which whole names are compared.</param>
internal sealed record IndexedName(int Ingredient, string Text, MatchedNameKind Kind, string? Language, string Key);
