using System.Globalization;
using System.Text.Json.Nodes;
using Materia.Api.Http;
using Materia.Api.Serving;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Materia.Api.OpenApi;

/// <summary>
/// Adds to each operation what its endpoint declares about itself: query parameters (<see cref="AcceptedQuery"/>), the example
/// call (<see cref="CallExample"/>), what each answer means, and the headers that come with it.
/// </summary>
public sealed class OperationDescription : IOpenApiOperationTransformer
{
    /// <summary>The extension that lists calls which work as they stand.</summary>
    public const string ExamplesExtension = "x-example-calls";

    /// <inheritdoc/>
    public Task TransformAsync(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellationToken)
    {
        var metadata = context.Description.ActionDescriptor.EndpointMetadata;
        operation.Parameters ??= [];
        foreach (var parameter in metadata.OfType<AcceptedQuery>().SelectMany(q => q.Parameters))
        {
            operation.Parameters.Add(Parameter(parameter));
        }

        var examples = metadata.OfType<CallExample>().Select(e => e.Url).ToArray();
        if (examples.Length > 0)
        {
            Exemplify(operation, "/" + context.Description.RelativePath, examples);
        }

        operation.Responses = InOrder(operation.Responses ?? []);
        var reads = context.Description.RelativePath?.StartsWith("v1/", StringComparison.Ordinal) == true;
        foreach (var (status, response) in operation.Responses)
        {
            Describe((OpenApiResponse)response, int.Parse(status, CultureInfo.InvariantCulture), operation, reads);
        }

        return Task.CompletedTask;
    }

    private static OpenApiResponses InOrder(OpenApiResponses responses)
    {
        var ordered = new OpenApiResponses();
        foreach (var (status, response) in responses.OrderBy(r => r.Key, StringComparer.Ordinal))
        {
            ordered.Add(status, response);
        }

        return ordered;
    }

    private static OpenApiParameter Parameter(QueryParameter parameter)
    {
        var schema = new OpenApiSchema
        {
            Type = parameter.Value switch
            {
                QueryValue.Whole => JsonSchemaType.Integer,
                QueryValue.Boolean => JsonSchemaType.Boolean,
                _ => JsonSchemaType.String,
            },
            Enum = parameter.Words.Count == 0 ? null : [.. parameter.Words.Select(w => (JsonNode)w)],
            Minimum = parameter.Least?.ToString(CultureInfo.InvariantCulture),
            Maximum = parameter.Greatest?.ToString(CultureInfo.InvariantCulture),
        };
        return new()
        {
            Name = parameter.Name,
            In = ParameterLocation.Query,
            Required = parameter.Required,
            Description = parameter.Description,
            Schema = parameter.Repeatable ? new OpenApiSchema { Type = JsonSchemaType.Array, Items = schema } : schema,
            Example = parameter.Example?.DeepClone(),
        };
    }

    private static void Exemplify(OpenApiOperation operation, string template, string[] urls)
    {
        operation.AddExtension(ExamplesExtension, new JsonNodeExtension(new JsonArray([.. urls.Select(u => (JsonNode)u)])));
        var shown = string.Join(", ", urls.Select(u => $"`GET {u}`"));
        operation.Description = $"{operation.Description}\n\nExample: {shown}";

        // The examples of path parameters are the segments of the first example call at their places.
        var (places, values) = (template.Split('/'), urls[0].Split('?')[0].Split('/'));
        foreach (var parameter in operation.Parameters!.OfType<OpenApiParameter>().Where(p => p.In == ParameterLocation.Path))
        {
            // A segment may go on after the parameter, as in {name}.svg.
            var written = "{" + parameter.Name + "}";
            var place = Array.FindIndex(places, p => p.StartsWith(written, StringComparison.Ordinal));
            parameter.Example = values[place][..^(places[place].Length - written.Length)];
        }
    }

    private static void Describe(OpenApiResponse response, int status, OpenApiOperation operation, bool reads)
    {
        response.Description = status switch
        {
            200 => operation.Summary,
            301 => "The ingredient has another id now; Location tells its address.",
            304 => "The caller holds this answer already (If-None-Match).",
            _ => ProblemKinds.OfStatus(status)?.Title ?? response.Description,
        };
        if (!reads)
        {
            return;
        }

        response.Headers ??= new Dictionary<string, IOpenApiHeader>();
        if (status < 500)
        {
            response.Headers[ReleaseHeaders.NumberHeader] = Header("The number of the release that the answer comes from.", JsonSchemaType.Integer);
        }

        if (status is 200 or 304 && operation.Responses!.ContainsKey("304"))
        {
            response.Headers["ETag"] = Header("A strong entity tag; send it as If-None-Match to ask whether the answer has changed.", JsonSchemaType.String);
        }

        if (status is 429 or 503)
        {
            response.Headers["Retry-After"] = Header("When to try again [s].", JsonSchemaType.Integer);
        }
    }

    private static OpenApiHeader Header(string description, JsonSchemaType type) =>
        new() { Description = description, Schema = new OpenApiSchema { Type = type } };
}
