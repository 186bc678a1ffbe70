namespace Materia.Search;

/// <summary>A name to offer.</summary>
/// <param name="Text">The name as it is written.</param>
/// <param name="IngredientId">The ingredient that carries it.</param>
/// <param name="Kind">What sort of name it is.</param>
/// <param name="Language">Its language as a BCP 47 tag, where it has one.</param>
public sealed record Suggestion(string Text, string IngredientId, MatchedNameKind Kind, string? Language);
