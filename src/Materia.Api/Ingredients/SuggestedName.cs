using Materia.Search;

namespace Materia.Api.Ingredients;

/// <summary>A name to offer in a search box.</summary>
public sealed record SuggestedName
{
    /// <summary>The name as it is written.</summary>
    public required string Text { get; init; }

    /// <summary>The id of the ingredient that carries it.</summary>
    public required string Ingredient { get; init; }

    /// <summary>What sort of name or number it is.</summary>
    public required MatchedNameKind Kind { get; init; }

    /// <summary>Its language as a BCP 47 tag, where it has one.</summary>
    public string? Language { get; init; }

    /// <summary>The name that the search offers.</summary>
    public static SuggestedName Of(Suggestion suggestion) => new()
    {
        Text = suggestion.Text,
        Ingredient = suggestion.IngredientId,
        Kind = suggestion.Kind,
        Language = suggestion.Language,
    };
}
