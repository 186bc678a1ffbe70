using Materia.Api.Evaluations.Reading;
using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Materia.Formulation;
using Materia.Formulation.Sections;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Evaluations;

/// <summary>Evaluations of formulas.</summary>
public static class EvaluationEndpoints
{
    private static readonly QueryParameter Sections = new(
        "sections", "The parts of the answer, parted by commas; all by default. " + string.Join(" ", EvaluationSections.All.Select(s => $"{s.Name}: {s.Summary}")))
    {
        Repeatable = true,
        Words = [.. EvaluationSections.All.Select(s => s.Name)],
    };

    private static readonly QueryParameter Explain = new(
        "explain", "Whether each result carries its steps: the figures that went in with their sources, the equation and the arithmetic.")
    {
        Value = QueryValue.Boolean,
    };

    private static readonly QueryParameter Model = new(
        "meltingModel",
        "How species share a crystal in the section melting. class-solutions: each class is one solid solution with its own mixing weight, the recommended model and the usual one. " +
        "pure-crystals: every species crystallises alone (all weights 0). ideal-classes: each class mixes ideally (all weights 1), which gives fats that are much too hard. " +
        "The other two are there for comparison and teaching.")
    {
        Words = KebabCase<MeltingModel>.Words,
        Example = KebabCase<MeltingModel>.Word(MeltingModel.ClassSolutions),
    };

    private static readonly QueryParameter ExplainAt = new(
        "explainAt", "The temperature [Cel], a whole degree, of the equilibrium that the steps of the section melting show; 20 when it is left out. It goes with explain=true.")
    {
        Value = QueryValue.Whole,
        Least = SolidContentCurve.From,
        Greatest = SolidContentCurve.To,
        Example = Blend.UsualExplainAt,
    };

    private static readonly QueryParameter AsOf = new(
        "asOf", "The day on which the product is placed on the market, as 2026-08-01; it decides which rules are in force. Today where it is left out.")
    {
        Example = "2026-08-01",
    };

    /// <summary>Adds <c>POST /evaluations</c>.</summary>
    public static IEndpointRouteBuilder MapEvaluations(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/evaluations", EvaluateAsync)
            .WithName("EvaluateFormula")
            .WithTags("Evaluations")
            .WithSummary("What can be computed of a formula")
            .WithDescription(
                "Takes a formula and answers with its composition, iodine and saponification value, melting, density, flow, oxidation, weights and cost of the batch, directions for use, and how much of the formula each result rests on. " +
                "A line's amount is its percent, or on every line a mass with its unit, or on one line balance: true. A line names an ingredient of the catalogue, or describes the maker's own material under own. " +
                "Each computed figure has a value with low and high, the key of its method, its coverage and warnings; what cannot be computed says why under absent. " +
                "The figures are a drafting aid: before a product is sold, have a qualified safety assessor judge it.")
            .WithQuery(Sections, Explain, Model, ExplainAt, AsOf)
            .Accepts<Formula>("application/json")
            .Produces<Evaluation>()
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .ProducesProblem(StatusCodes.Status422UnprocessableEntity)
            .ProducesProblem(StatusCodes.Status429TooManyRequests)
            .AddOpenApiOperationTransformer(EvaluationExample.AddTo);
        return routes;
    }

    private static async Task<Results<JsonHttpResult<Evaluation>, ProblemHttpResult>> EvaluateAsync(HttpContext context, ServedRelease served, TimeProvider time)
    {
        var queryFaults = new RequestFaults();
        var options = Options(new QueryReader(context.Request.Query, queryFaults), queryFaults, DateOnly.FromDateTime(time.GetUtcNow().UtcDateTime));
        if (queryFaults.Any)
        {
            return Problems.InvalidRequest(queryFaults);
        }

        if (!RequestBody.IsJson(context.Request))
        {
            return Problems.Of(ProblemKinds.UnsupportedMediaType);
        }

        var (formula, faults) = StrictJson.Read<Formula>(await RequestBody.ReadAsync(context), FormulationJson.Options);
        if (formula is null)
        {
            return Problems.InvalidRequest(FormulaProblem.Of(faults, served.Index));
        }

        var normalisation = NormalisedFormula.Create(formula, served.Release);
        return normalisation.Formula is { } normalised
            ? TypedResults.Json(Evaluator.Evaluate(normalised, served.Release, options), EvaluationJson.Options)
            : Problems.Unprocessable(FormulaProblem.Of(normalisation.Faults, served.Index));
    }

    private static EvaluationOptions Options(QueryReader query, RequestFaults faults, DateOnly today)
    {
        var names = query.All(Sections.Name);
        List<EvaluationSection> sections = [];
        foreach (var name in names.Distinct(StringComparer.Ordinal))
        {
            if (EvaluationSections.Find(name) is { } section)
            {
                sections.Add(section);
                continue;
            }

            var nearest = NearestWord.Of(name, Sections.Words) is { } word ? $" Did you mean {word}?" : string.Empty;
            faults.Add("?" + Sections.Name, $"There is no section '{(name.Length <= 40 ? name : name[..40] + "...")}'.{nearest} The sections are {string.Join(", ", Sections.Words)}.");
        }

        var explain = query.Flag(Explain.Name);
        var explainAt = query.Whole(ExplainAt.Name, SolidContentCurve.From, SolidContentCurve.To, Blend.UsualExplainAt);
        if (!explain && query.Text(ExplainAt.Name) is not null)
        {
            faults.Add("?" + ExplainAt.Name, "explainAt says where the steps of melting look; add explain=true to see them, or leave it out.");
        }

        var options = new EvaluationOptions { Explain = explain, MeltingModel = query.Word<MeltingModel>(Model.Name), ExplainAt = explainAt, AsOf = query.Day(AsOf.Name) ?? today };
        return names.Count == 0 ? options : options with { Sections = sections };
    }
}
