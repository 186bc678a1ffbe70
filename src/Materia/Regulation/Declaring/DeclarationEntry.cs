using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Regulation.Declaring;

/// <summary>One name of an ingredient list.</summary>
public sealed record DeclarationEntry
{
    /// <summary>The name as it is printed.</summary>
    public required string Name { get; init; }

    /// <summary>The part of the list that it stands in.</summary>
    public required DeclarationGroup Group { get; init; }

    /// <summary>The share of the formula that decides its place [%]; typical where a supplier's mixture gives a range.</summary>
    public required Amount Share { get; init; }

    /// <summary>What brings it: ids of ingredients, or the maker's own names.</summary>
    public required IReadOnlyList<string> Ingredients { get; init; }

    /// <summary>The numbers of the rules that put it there.</summary>
    public required IReadOnlyList<string> Rules { get; init; }

    /// <summary>What to check before it is printed.</summary>
    public string? Note { get; init; }
}

/// <summary>The parts of an ingredient list, in the order in which they are printed.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<DeclarationGroup>))]
public enum DeclarationGroup
{
    /// <summary>By falling weight, in this order and no other.</summary>
    Ordered,

    /// <summary>Small shares, in whatever order; here by falling weight.</summary>
    Free,

    /// <summary>Allergens that must be named, in whatever order; their shares are below the bound of the ordered part.</summary>
    Allergen,

    /// <summary>Colourants, in whatever order after all others.</summary>
    Colourant,
}
