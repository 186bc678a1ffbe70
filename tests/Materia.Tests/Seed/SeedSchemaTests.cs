using System.Text.Json.Nodes;
using Materia.Catalogue;
using Materia.Seed.Schema;

namespace Materia.Tests.Seed;

public sealed class SeedSchemaTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Check_ShippedSchemas_AreWhatTheRecordsGive() => SeedSchema.Check(RepositoryRoot.SeedData).ShouldBeEmpty();

    [Fact]
    public void Check_MissingOrChangedSchema_IsReported()
    {
        const string Ingredient = "schema/ingredient.schema.json";
        SeedSchema.Check(folder.Root).Select(f => f.File).ShouldBe([Ingredient, "schema/source.schema.json"]);

        SeedSchema.Write(folder.Root);
        SeedSchema.Check(folder.Root).ShouldBeEmpty();

        folder.Write(Ingredient, folder.Text(Ingredient).Replace("butter", "margarine", StringComparison.Ordinal));
        SeedSchema.Check(folder.Root).ShouldHaveSingleItem().Message.ShouldContain("run schema");
    }

    [Fact]
    public void All_IngredientSchema_RefusesUnknownMembersAndNamesEveryProperty()
    {
        var schema = JsonNode.Parse(SeedSchema.All()["schema/ingredient.schema.json"])!;

        schema["additionalProperties"]!.GetValue<bool>().ShouldBeFalse();
        schema["required"]!.AsArray().Select(n => n!.GetValue<string>()).ShouldBe(["id", "kind", "names"]);
        var figure = schema["properties"]!["properties"]!["items"]!;
        figure["additionalProperties"]!.GetValue<bool>().ShouldBeFalse();
        figure["properties"]!["property"]!["enum"]!.AsArray().Select(n => n!.GetValue<string>()).ShouldBe(KebabCase<Property>.Words);
        figure["required"]!.AsArray().Select(n => n!.GetValue<string>()).ShouldBe(["property", "unit", "evidence", "source"], ignoreOrder: true);
    }

    [Fact]
    public void All_EveryMember_IsDescribed()
    {
        foreach (var text in SeedSchema.All().Values)
        {
            Undescribed(JsonNode.Parse(text)!, "").ShouldBeEmpty();
        }
    }

    private static IEnumerable<string> Undescribed(JsonNode schema, string path) =>
        schema is not JsonObject { } node
            ? []
            : (node["properties"]?.AsObject() ?? [])
                .SelectMany(m => Undescribed(m.Value!, $"{path}/{m.Key}").Concat(m.Value!["description"] is null ? [$"{path}/{m.Key}"] : Array.Empty<string>()))
                .Concat(node["items"] is { } items ? Undescribed(items, $"{path}/items") : []);
}
