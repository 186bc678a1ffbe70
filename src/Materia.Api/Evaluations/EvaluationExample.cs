using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Materia.Api.Evaluations;

/// <summary>The formula that the OpenAPI document shows; the tests send it as it stands.</summary>
internal static class EvaluationExample
{
    /// <summary>A whipped hair mask with a butter, oils, a fatty alcohol, a clay and a maker's own essential oil.</summary>
    public const string Formula = """
        {
          "title": "Whipped cupuacu hair mask",
          "use": "hair-mask-rinse-off",
          "market": "eu",
          "lines": [
            { "ingredient": "cupuacu-butter", "percent": 30 },
            { "ingredient": "babassu-oil", "percent": 22.5 },
            { "ingredient": "cetyl-alcohol", "percent": 4 },
            { "ingredient": "kaolin", "percent": 8, "phase": "cool-down" },
            { "own": { "name": "Lavender oil, lot 12", "inciName": "Lavandula Angustifolia Oil", "kind": "essential-oil",
                       "constituents": [ { "substance": "linalool", "percent": 35 }, { "substance": "115-95-7", "percent": 32 } ],
                       "density": { "value": 0.885, "unit": "g/mL" } },
              "percent": 0.5, "phase": "cool-down" },
            { "ingredient": "sunflower-oil", "balance": true }
          ],
          "batch": { "mass": 250, "unit": "g", "scaleResolution": 0.1, "lossPercent": 3, "jarVolume": 120 },
          "prices": [
            { "ingredient": "cupuacu-butter", "price": 32, "currency": "EUR", "per": { "mass": 1, "unit": "kg" } },
            { "ingredient": "sunflower-oil", "price": 2, "currency": "EUR", "per": { "mass": 500, "unit": "g" } },
            { "ingredient": "kaolin", "price": 5, "currency": "EUR", "per": { "mass": 1, "unit": "kg" } }
          ],
          "packaging": [ { "name": "jar with lid", "price": 0.85, "currency": "EUR" } ],
          "whip": { "overrunPercent": 40 }
        }
        """;

    /// <summary>Adds the example to the operation's body.</summary>
    public static Task AddTo(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellation)
    {
        if (operation.RequestBody?.Content is { } content)
        {
            foreach (var media in content.Values)
            {
                media.Example = JsonNode.Parse(Formula);
            }
        }

        return Task.CompletedTask;
    }
}
