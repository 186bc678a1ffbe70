using System.Globalization;
using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue.Regulated;
using Materia.Formulation;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Reference;

/// <summary>The table of fragrance allergens.</summary>
public static class AllergenEndpoints
{
    private const int LongestText = 120;
    private const string Day = "yyyy-MM-dd";

    private static readonly QueryParameter Text = new(
        "text", "A part of the name on the label, of a member or of its INCI name, or a CAS number. Letter case does not matter.")
    {
        Example = "linalool",
    };

    private static readonly QueryParameter MarketOf = MarketLaw.Parameter(
        "A market: only allergens that its law asks for. Without it, the European list.");

    private static readonly QueryParameter AsOf = new(
        "asOf", "A day: only allergens that a product placed on the market on that day must name. Without it, those of every day.")
    {
        Example = "2026-08-01",
    };

    /// <summary>Adds <c>GET /allergens</c>.</summary>
    public static IEndpointRouteBuilder MapAllergens(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/allergens", List)
            .WithName("ListAllergens")
            .WithTags("Reference tables")
            .WithSummary("The fragrance allergens that a label must name")
            .WithDescription(
                "Each allergen or group with the name for the label, the substances and materials that are added up, the thresholds for products that stay on and that are washed off [%], the days of transition, and where it was read. " +
                "The share must exceed the threshold; at the threshold itself the name is not due.")
            .WithQuery(Text, MarketOf, AsOf)
            .WithExample("/v1/allergens?text=citral")
            .WithExample("/v1/allergens?market=uk");
        return routes;
    }

    private static Results<CatalogueResult<AllergenAnswer>, ProblemHttpResult> List(HttpRequest request, ServedRelease served)
    {
        var faults = new RequestFaults();
        var reader = new QueryReader(request.Query, faults);
        var text = reader.Text(Text.Name, LongestText);
        var market = MarketLaw.Read(reader, faults);
        var asOf = ReadDay(reader.Text(AsOf.Name), faults);
        if (faults.Any)
        {
            return Problems.InvalidRequest(faults);
        }

        var items = served.Release.Content.Allergens.Where(a => IsAsked(a, market ?? Market.Eu, asOf) && (text is null || Names(a, text))).ToList();
        return new CatalogueResult<AllergenAnswer>(served, new() { Total = items.Count, Rule = market is { } named ? Rule(named) : null, Items = items });
    }

    private static bool IsAsked(Allergen allergen, Market market, DateOnly? asOf) => market switch
    {
        Market.Us => false,
        Market.Uk => allergen.NewProductsUntil is null,
        _ => asOf is not { } day || allergen.NewProductsUntil is not { } last || day > last,
    };

    private static bool Names(Allergen allergen, string text) =>
        Holds(allergen.DeclarationName, text)
        || allergen.Members.Any(m => m.Cas == text || Holds(m.Name, text) || (m.InciName is { } inci && Holds(inci, text)));

    private static bool Holds(string name, string text) => name.Contains(text, StringComparison.OrdinalIgnoreCase);

    private static string Rule(Market market) => market switch
    {
        Market.Us => "No federal duty to name fragrance allergens was found in force: an act orders a list, which was not found published.",
        Market.Uk => "Great Britain names those of the first list; the additions of 2023 were not taken over as far as the sources seen go. Northern Ireland follows the European Union.",
        _ => "New products name each from its own day on; products placed on the market before may be made available until the entry's last day.",
    };

    private static DateOnly? ReadDay(string? text, RequestFaults faults)
    {
        if (text is null)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        faults.Add("?" + AsOf.Name, $"asOf '{text}' is no day of the calendar; write it as year, month and day, such as 2026-08-01.");
        return null;
    }
}
