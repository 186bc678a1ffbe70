using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Materia.Api.OpenApi;

/// <summary>Says in the OpenAPI document what the service is.</summary>
public sealed class DocumentDescription : IOpenApiDocumentTransformer
{
    private static readonly (string Name, string Description)[] Tags =
    [
        ("Ingredients", "Search the catalogue and read whole records, every figure with its source and grade."),
        ("Evaluations", "What follows from a formula: figures with ranges, methods and coverage."),
        ("Reference tables", "Fatty acids, sources, methods and product types."),
        ("Release", "Which state of the catalogue answers come from."),
        ("Health", "Probes for whoever runs the service."),
    ];

    /// <inheritdoc/>
    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        document.Info = new()
        {
            Title = "Materia",
            Version = "v1",
            Summary = "Raw materials for natural hair and skin care: what is known of them, and what follows for a formula.",
            Description =
                "Reads need no key. Every stored figure carries its source, where in the source it stands, and a grade: published, secondary, common-practice or memory. " +
                "What is not known is absent. Units are UCUM codes; percentages are by mass. Errors are RFC 9457 problems whose errors member points at the query parameter (?limit) or the place in the body (/lines/0/percent). " +
                "Results are a drafting aid: before a product is sold or may hurt someone, ask a qualified safety assessor, do a patch test and check local law.",
            License = new() { Name = "MIT", Identifier = "MIT" },
        };
        document.Servers = [new() { Url = "/", Description = "The service that serves this document." }];
        var used = document.Paths.Values.SelectMany(p => p.Operations?.Values ?? Enumerable.Empty<OpenApiOperation>()).SelectMany(o => o.Tags ?? new HashSet<OpenApiTagReference>()).Select(t => t.Name).ToHashSet();
        document.Tags = new HashSet<OpenApiTag>(Tags.Where(t => used.Contains(t.Name)).Select(t => new OpenApiTag { Name = t.Name, Description = t.Description }));
        return Task.CompletedTask;
    }
}
