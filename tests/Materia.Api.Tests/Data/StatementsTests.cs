using System.Text.Json;
using System.Text.Json.Nodes;
using Materia.Catalogue;

namespace Materia.Api.Tests.Data;

/// <summary>That nothing which is said of an ingredient is passed over where its statements are counted or their sources gathered.</summary>
public sealed class StatementsTests
{
    [Fact]
    public void Statements_IngredientThatSaysEverything_HoldEachObjectWithAGrade()
    {
        var butter = SampleWorking.Add(SampleIngredients.Butter());
        var json = JsonNode.Parse(JsonSerializer.Serialize(butter, CatalogueJson.Options))!.AsObject();

        // The sample leaves no member of the record out, so a new one without a sample fails here.
        json.Select(m => m.Key).Order().ShouldBe(typeof(Ingredient).GetProperties().Select(p => JsonNamingPolicy.CamelCase.ConvertName(p.Name)).Order());
        butter.Statements().Count().ShouldBe(Graded(json));
    }

    private static int Graded(JsonNode? node) => node switch
    {
        JsonObject members => (members.ContainsKey("evidence") ? 1 : 0) + members.Sum(m => Graded(m.Value)),
        JsonArray items => items.Sum(Graded),
        _ => 0,
    };
}
