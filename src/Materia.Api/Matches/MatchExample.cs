using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Materia.Api.Matches;

/// <summary>The profile that the OpenAPI document shows; the tests send it as it stands.</summary>
internal static class MatchExample
{
    /// <summary>An oil sold as olive oil, with too much linoleic acid for one.</summary>
    public const string Profile = """
        {
          "fattyAcids": [
            { "acid": "16:0", "percent": 9.5 },
            { "acid": "18:0", "percent": 3.2 },
            { "acid": "18:1", "percent": 50.1 },
            { "acid": "18:2", "percent": 35.6 },
            { "acid": "18:3", "percent": 0.4 }
          ],
          "claimed": "olive-oil",
          "limit": 3
        }
        """;

    /// <summary>Adds the example to the operation's body.</summary>
    public static Task AddTo(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellation)
    {
        if (operation.RequestBody?.Content is { } content)
        {
            foreach (var media in content.Values)
            {
                media.Example = JsonNode.Parse(Profile);
            }
        }

        return Task.CompletedTask;
    }
}
