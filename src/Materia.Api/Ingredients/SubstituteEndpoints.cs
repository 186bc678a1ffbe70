using System.ComponentModel;
using System.Text.Json.Nodes;
using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Formulation.Neighbours;
using Materia.Formulation.Scopes;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Ingredients;

/// <summary>What can stand in for an ingredient.</summary>
public static class SubstituteEndpoints
{
    private const int MostPantry = 500;

    private const string Caution = "Neighbours are compared on their own. A formula in which one takes another's place sets, melts and keeps differently: evaluate it again, and make a small batch first.";

    private static readonly QueryParameter Pantry = new("pantry", "Ids of the ingredients at hand, parted by commas; only these come into question.") { Repeatable = true };

    private static readonly QueryParameter Kind = new("kind", "Kinds of material, one of which it must be.") { Repeatable = true, Words = KebabCase<IngredientKind>.Words };

    private static readonly QueryParameter ExcludeOrigin = new(
        "excludeOrigin", "Origins that it must not have: a kingdom such as animal, an allergen family such as tree-nut, or a group of plants such as palm. An ingredient whose origin the catalogue does not state is not shut out.")
    {
        Repeatable = true,
        Words = IngredientScope.OriginWords,
    };

    private static readonly QueryParameter MaxComedogenic = new("maxComedogenic", "The highest grade of the rabbit-ear assay allowed. An ingredient without a grade is not shut out.")
    {
        Value = QueryValue.Whole,
        Least = 0,
        Greatest = 5,
    };

    private static readonly QueryParameter Limit = new("limit", "How many are given.")
    {
        Value = QueryValue.Whole,
        Least = 1,
        Greatest = NeighbourFilter.GreatestLimit,
        Example = JsonValue.Create(NeighbourFilter.UsualLimit),
    };

    /// <summary>Adds <c>GET /ingredients/{id}/substitutes</c>.</summary>
    public static IEndpointRouteBuilder MapSubstitutes(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/ingredients/{id}/substitutes", Find)
            .WithName("FindSubstitutes")
            .WithTags("Ingredients")
            .WithSummary("What can stand in for an ingredient")
            .WithDescription(
                "Ranks neighbours by what they are for (substitution groups, kind, functions) and by how far their properties lie apart, counted in steps that a maker notices. " +
                "Each says why it is there, what differs with figures, how much of it takes the place of one part where that is known, and what to know before taking it. " +
                "A figure that either side lacks counts as a difference, never as agreement; coverage tells how much could be compared.")
            .WithQuery(Pantry, Kind, ExcludeOrigin, MaxComedogenic, Limit)
            .Produces(StatusCodes.Status301MovedPermanently)
            .ProducesProblem(StatusCodes.Status404NotFound)
            .WithExample("/v1/ingredients/cocoa-butter/substitutes?limit=5")
            .WithExample("/v1/ingredients/beeswax/substitutes?excludeOrigin=animal")
            .WithExample("/v1/ingredients/olive-oil/substitutes?pantry=sunflower-oil,coconut-oil,sweet-almond-oil&excludeOrigin=tree-nut&maxComedogenic=2");
        return routes;
    }

    private static Results<CatalogueResult<SubstitutesAnswer>, RedirectHttpResult, ProblemHttpResult> Find(
        [Description("The id of the ingredient to do without.")] string id, HttpRequest request, ServedRelease served)
    {
        var faults = new RequestFaults();
        var filter = Read(new QueryReader(request.Query, faults), served, faults);
        if (faults.Any)
        {
            return Problems.InvalidRequest(faults);
        }

        if (served.Release.FindIngredient(id) is { } ingredient)
        {
            var found = NeighbourSearch.Of(served.Release).Find(id, filter);
            return new CatalogueResult<SubstitutesAnswer>(served, new()
            {
                Id = id,
                Name = ingredient.CommonName(),
                Total = found.Total,
                Items = found.Items,
                Method = NeighbourSearch.Method,
                Warnings = found.Total == 0 ? [Caution, "Nothing that can stand in for it passes the filters; take some of them away."] : [Caution],
            });
        }

        return served.Release.FindPresentId(id) is { } present
            ? TypedResults.Redirect($"{IngredientEndpoints.Path(present)}/substitutes{request.QueryString}", permanent: true)
            : UnknownIngredient.NotFound(id, served.Index);
    }

    private static NeighbourFilter Read(QueryReader query, ServedRelease served, RequestFaults faults)
    {
        var limit = query.Whole(Limit.Name, 1, NeighbourFilter.GreatestLimit, NeighbourFilter.UsualLimit);
        var grade = query.Whole(MaxComedogenic.Name, 0, 5, 5);
        return new()
        {
            Pantry = PantryIds(query.All(Pantry.Name), served, faults),
            Kinds = query.Words<IngredientKind>(Kind.Name),
            Excluded = Excluded(query.All(ExcludeOrigin.Name), faults),
            MaxComedogenic = query.Text(MaxComedogenic.Name) is null ? null : grade,
            Limit = limit,
        };
    }

    private static List<string> PantryIds(IReadOnlyList<string> asked, ServedRelease served, RequestFaults faults)
    {
        if (asked.Count > MostPantry)
        {
            faults.Add("?pantry", $"pantry names {asked.Count} ingredients; {MostPantry} at most.");
            return [];
        }

        var ids = new List<string>();
        foreach (var id in asked)
        {
            if ((served.Release.FindIngredient(id)?.Id ?? served.Release.FindPresentId(id)) is { } known)
            {
                ids.Add(known);
            }
            else
            {
                faults.Add("?pantry", UnknownIngredient.Message(id, served.Index));
            }
        }

        return ids;
    }

    private static List<IngredientScope> Excluded(IReadOnlyList<string> words, RequestFaults faults)
    {
        var scopes = new List<IngredientScope>();
        foreach (var word in words)
        {
            if (IngredientScope.TryParseOrigin(word, out var scope))
            {
                scopes.Add(scope!);
                continue;
            }

            var nearest = NearestWord.Of(word, IngredientScope.OriginWords) is { } known ? $" Did you mean {known}?" : string.Empty;
            faults.Add("?excludeOrigin", $"There is no origin '{(word.Length <= 40 ? word : word[..40] + "...")}'.{nearest} The words are {string.Join(", ", IngredientScope.OriginWords)}.");
        }

        return scopes;
    }
}
