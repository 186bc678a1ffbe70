using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Materia.Api.OpenApi;

/// <summary>Describes the members of a problem, those included that RFC 9457 leaves to the service.</summary>
public sealed class ProblemSchema : IOpenApiSchemaTransformer
{
    /// <inheritdoc/>
    public Task TransformAsync(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancellationToken)
    {
        if (context.JsonTypeInfo.Type != typeof(ProblemDetails))
        {
            return Task.CompletedTask;
        }

        schema.Description = "A problem (RFC 9457).";
        schema.Properties = new Dictionary<string, IOpenApiSchema>
        {
            ["type"] = Text("The sort of problem: a path on this service that leads to a page about it."),
            ["title"] = Text("The sort of problem in words."),
            ["status"] = new OpenApiSchema { Type = JsonSchemaType.Integer, Description = "The HTTP status code." },
            ["detail"] = Text("What happened this time, and what to do."),
            ["instance"] = Text("The path and query that were asked for."),
            ["traceId"] = Text("What the service's log knows the request by."),
            ["errors"] = new OpenApiSchema
            {
                Type = JsonSchemaType.Object,
                Description = "What is wrong, by query parameter (?limit) or by place in the body (a JSON Pointer such as /lines/0/percent; the empty text is the whole body).",
                AdditionalProperties = new OpenApiSchema { Type = JsonSchemaType.Array, Items = new OpenApiSchema { Type = JsonSchemaType.String } },
            },
        };
        schema.Required = new HashSet<string> { "type", "title", "status", "detail", "instance", "traceId" };
        return Task.CompletedTask;
    }

    private static OpenApiSchema Text(string description) => new() { Type = JsonSchemaType.String, Description = description };
}
