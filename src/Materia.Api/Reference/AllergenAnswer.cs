using Materia.Catalogue.Regulated;

namespace Materia.Api.Reference;

/// <summary>The fragrance allergens that were asked for.</summary>
public sealed record AllergenAnswer
{
    /// <summary>How many there are.</summary>
    public required int Total { get; init; }

    /// <summary>What the market asks for, where one was named.</summary>
    public string? Rule { get; init; }

    /// <summary>The allergens, in the order of the table.</summary>
    public required IReadOnlyList<Allergen> Items { get; init; }
}
