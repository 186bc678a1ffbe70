using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Lookup;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Reference;

/// <summary>The table of limits.</summary>
public static class LimitEndpoints
{
    private const int LongestSubstance = 120;

    private static readonly QueryParameter Substance = new(
        "substance", "A substance by its name, INCI name or CAS number, or the id of an ingredient: then the limits that name it, its parts and its constituents. Letter case does not matter.")
    {
        Example = "lavender-oil",
    };

    private static readonly QueryParameter Use = new(
        "use", "A product type, as GET /v1/uses lists them: only limits that bind it.")
    {
        Example = "body-lotion",
    };

    private static readonly QueryParameter MarketOf = MarketLaw.Parameter(
        "A market: only its law, the trade's standards and opinions. For uk both its own rows and the European ones that it took over.");

    /// <summary>Adds <c>GET /limits</c>.</summary>
    public static IEndpointRouteBuilder MapLimits(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/limits", List)
            .WithName("ListLimits")
            .WithTags("Reference tables")
            .WithSummary("The limits of law, trade standards and opinions")
            .WithDescription(
                "Each limit of each instrument for one scope of products: what counts towards it and with which factor, the greatest share, conditions, the words for the label, dates, and where it was read. " +
                "An empty list says that no limit in the tables names the substance, not that it is safe or free to use. POST /v1/evaluations adds a whole formula up against them.")
            .WithQuery(Substance, Use, MarketOf)
            .WithExample("/v1/limits?substance=citral&use=body-lotion&market=eu")
            .WithExample("/v1/limits?substance=lavender-oil&use=face-cream");
        return routes;
    }

    private static Results<CatalogueResult<LimitAnswer>, ProblemHttpResult> List(HttpRequest request, ServedRelease served)
    {
        var faults = new RequestFaults();
        var reader = new QueryReader(request.Query, faults);
        var substance = reader.Text(Substance.Name, LongestSubstance);
        var use = ReadUse(reader.Text(Use.Name), served.Release, faults);
        var market = MarketLaw.Read(reader, faults);
        if (faults.Any)
        {
            return Problems.InvalidRequest(faults);
        }

        var authorities = market is { } named ? MarketLaw.Of(named) : Enum.GetValues<Authority>();
        var ingredient = substance is null ? null : FindIngredient(substance, served.Release);
        var found = Find(substance, ingredient, served.Release);
        var kept = found.Where(m => (use is null || m.Limit.Scope.Binds(use)) && authorities.Contains(m.Limit.Authority)).ToList();
        return new CatalogueResult<LimitAnswer>(served, new()
        {
            Total = kept.Count,
            Ingredient = ingredient?.Id,
            Named = substance is null ? [] : NamedSubstance.Of(kept),
            DidYouMean = substance is not null && found.Count == 0 && ingredient is null ? Nearest(substance, served.Release) : [],
            Items = [.. kept.Select(m => m.Limit)],
        });
    }

    private static IReadOnlyList<LimitMatch> Find(string? substance, Ingredient? ingredient, Release release)
    {
        if (substance is null)
        {
            return [.. release.Content.Limits.Select(l => new LimitMatch(l, l.Substance, MatchedAs.Itself))];
        }

        var lookup = LimitLookup.Of(release);
        return ingredient is null ? lookup.Find(substance) : lookup.Find(ingredient, release, withConstituents: true);
    }

    private static Ingredient? FindIngredient(string text, Release release)
    {
        var id = text.ToLowerInvariant();
        return release.FindIngredient(id) ?? (release.FindPresentId(id) is { } present ? release.FindIngredient(present) : null);
    }

    private static IReadOnlyList<string> Nearest(string substance, Release release) =>
        NearestWord.Of(substance, release.Content.Limits.Select(l => l.Substance).Distinct(StringComparer.Ordinal)) is { } nearest ? [nearest] : [];

    private static ProductUse? ReadUse(string? id, Release release, RequestFaults faults)
    {
        if (id is null || release.FindUse(id) is not null)
        {
            return id is null ? null : release.FindUse(id);
        }

        var uses = release.Content.Uses.Select(u => u.Id).ToList();
        var advice = NearestWord.Of(id, uses) is { } nearest ? $"did you mean {nearest}? It" : "it";
        faults.Add("?" + Use.Name, $"There is no use '{id}'; {advice} is one of {string.Join(", ", uses)}.");
        return null;
    }
}
