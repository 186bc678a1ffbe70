using Materia.Catalogue;
using Materia.Formulation.Normalising;
using Materia.Formulation.Scopes;

namespace Materia.Formulation.Optimising;

/// <summary>Materials that must not come into a proposal. What a formula holds already stays, unless it is to be done without.</summary>
public sealed record Exclusions
{
    private const int Most = 100;

    /// <summary>Sets of ingredients, such as <c>origin:animal</c>, <c>allergen:tree-nut</c>, <c>species:palm</c>, <c>kind:wax</c> or <c>ingredient:castor-oil</c>.</summary>
    public IReadOnlyList<string> Scopes { get; init; } = [];

    /// <summary>The highest comedogenic grade allowed, 0 to 5. An ingredient without a grade is not shut out by it, since nobody tested it; a warning says so.</summary>
    public int? MaxComedogenic { get; init; }

    /// <summary>Checks the exclusions and gives what they shut out; of use only when no fault was added.</summary>
    internal static Exclusion Read(Exclusions? exclude, string pointer, Release release, FaultList faults)
    {
        faults.Within($"{pointer}/maxComedogenic", exclude?.MaxComedogenic, 0, 5, "A comedogenic grade");
        if (exclude?.Scopes.Count > Most)
        {
            faults.Add($"{pointer}/scopes", $"There are at most {Most} sets.");
            return new([], exclude.MaxComedogenic);
        }

        var scopes = new List<IngredientScope>();
        for (var i = 0; i < (exclude?.Scopes.Count ?? 0); i++)
        {
            if (ScopeReading.Read(exclude!.Scopes[i], $"{pointer}/scopes/{i}", release, faults) is { } scope)
            {
                scopes.Add(scope);
            }
        }

        return new(scopes, exclude?.MaxComedogenic);
    }
}
