using System.ComponentModel;
using System.Text;
using Materia.Api.Figures;
using Materia.Api.Http;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Formulation;

namespace Materia.Api.Ingredients;

/// <summary>Figures of single ingredients.</summary>
public static class IngredientFigureEndpoints
{
    private const string Svg = "image/svg+xml";

    /// <summary>Adds <c>GET /ingredients/{id}/figures/{name}.svg</c>.</summary>
    public static IEndpointRouteBuilder MapIngredientFigures(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/ingredients/{id}/figures/{name}.svg", Get)
            .WithName("DrawIngredient")
            .WithTags("Ingredients")
            .WithSummary("A figure of an ingredient")
            .WithDescription($"The same figures as of a formula, for the ingredient alone: {string.Join(", ", FormulaFigures.OfIngredient.Select(f => f.Name))}. What is drawn is described in the document's own desc element.")
            .WithMetadata(new OfferedTypes([Svg]))
            .Produces<string>(StatusCodes.Status200OK, Svg)
            .Produces(StatusCodes.Status304NotModified)
            .Produces(StatusCodes.Status301MovedPermanently)
            .ProducesProblem(StatusCodes.Status404NotFound)
            .WithExample("/v1/ingredients/shea-butter/figures/melting.svg");
        return routes;
    }

    /// <summary>The figure of an ingredient as SVG; <see langword="null"/> where there is nothing to draw.</summary>
    public static string? Draw(Ingredient ingredient, FigureKind figure, Release release)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        ArgumentNullException.ThrowIfNull(figure);
        var alone = new Formula { Title = ingredient.CommonName(), Lines = [new FormulaLine { Ingredient = ingredient.Id, Percent = 100 }] };
        return NormalisedFormula.Create(alone, release).Formula is { } formula
            ? FormulaFigures.Svg(figure, Evaluator.Evaluate(formula, release, new EvaluationOptions { Sections = [figure.Section] }))
            : null;
    }

    private static IResult Get(
        [Description("The id of the ingredient.")] string id, [Description("The figure.")] string name, HttpContext context, ServedRelease served)
    {
        if (served.Release.FindIngredient(id) is not { } ingredient)
        {
            return served.Release.FindPresentId(id) is { } present
                ? TypedResults.Redirect($"{IngredientEndpoints.Path(present)}/figures/{Uri.EscapeDataString(name)}.svg", permanent: true)
                : UnknownIngredient.NotFound(id, served.Index);
        }

        if (FormulaFigures.OfIngredient.FirstOrDefault(f => f.Name == name) is not { } figure)
        {
            return Problems.NotFound($"There is no figure of this name. The figures of an ingredient are {string.Join(", ", FormulaFigures.OfIngredient.Select(f => f.Name))}.");
        }

        return Draw(ingredient, figure, served.Release) is { } svg
            ? new RepresentationResult(served.Represent(context.Request.Path, Encoding.UTF8.GetBytes(svg), Svg))
            : Problems.NotFound($"There is nothing to draw: the catalogue does not hold what this figure of {ingredient.CommonName()} needs.");
    }

    /// <summary>Writes a representation as it is.</summary>
    private sealed record RepresentationResult(Representation Representation) : IResult
    {
        /// <inheritdoc/>
        public Task ExecuteAsync(HttpContext httpContext) => Representation.WriteAsync(httpContext);
    }
}
