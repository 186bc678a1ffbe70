using System.Text.Json.Nodes;
using Microsoft.OpenApi;

namespace Materia.Api.Evaluations;

/// <summary>Puts an example into the description of an operation's body.</summary>
internal static class BodyExample
{
    /// <summary>Adds <paramref name="json"/> to the body of the endpoint's operation.</summary>
    public static RouteHandlerBuilder WithBodyExample(this RouteHandlerBuilder builder, string json) =>
        builder.AddOpenApiOperationTransformer((operation, _, _) =>
        {
            foreach (var media in operation.RequestBody?.Content?.Values ?? Enumerable.Empty<OpenApiMediaType>())
            {
                media.Example = JsonNode.Parse(json);
            }

            return Task.CompletedTask;
        });
}
