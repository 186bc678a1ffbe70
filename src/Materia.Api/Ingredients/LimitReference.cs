using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Lookup;

namespace Materia.Api.Ingredients;

/// <summary>A limit that names an ingredient or a part of it, in short; <c>GET /v1/limits?substance=</c> with the ingredient's id has it whole, and those on its constituents too.</summary>
public sealed record LimitReference
{
    /// <summary>The key of the limit.</summary>
    public required string Id { get; init; }

    /// <summary>The substance or group as the instrument names it.</summary>
    public required string Substance { get; init; }

    /// <summary>The part that it names, as its INCI name or common name; absent where it names the ingredient itself.</summary>
    public string? Part { get; init; }

    /// <summary>Whose rule it is.</summary>
    public required Authority Authority { get; init; }

    /// <summary>What it is about.</summary>
    public required LimitKind Kind { get; init; }

    /// <summary>The products that it binds, as the instrument words it, in short.</summary>
    public required string Scope { get; init; }

    /// <summary>The greatest share in the finished product [%]; absent where the instrument gives none.</summary>
    public decimal? MaxPercent { get; init; }

    /// <summary>What the share is counted as, where not as the substance itself.</summary>
    public string? ExpressedAs { get; init; }

    /// <summary>How the row was seen.</summary>
    public required Evidence Evidence { get; init; }

    /// <summary>The key of the instrument among the record's sources.</summary>
    public required string Source { get; init; }

    /// <summary>The entry or table in the instrument.</summary>
    public string? Entry { get; init; }

    /// <summary>The limits that name <paramref name="ingredient"/> or its parts, in the order of the table.</summary>
    public static IReadOnlyList<LimitReference> Of(Ingredient ingredient, Release release) =>
        [.. LimitLookup.Of(release).Find(ingredient, release, withConstituents: false).Select(Of)];

    private static LimitReference Of(LimitMatch match) => new()
    {
        Id = match.Limit.Id,
        Substance = match.Limit.Substance,
        Part = match.As == MatchedAs.Part ? match.Name : null,
        Authority = match.Limit.Authority,
        Kind = match.Limit.Kind,
        Scope = match.Limit.ScopeText,
        MaxPercent = match.Limit.MaxPercent,
        ExpressedAs = match.Limit.ExpressedAs,
        Evidence = match.Limit.Evidence,
        Source = match.Limit.Source,
        Entry = match.Limit.Locator,
    };
}
