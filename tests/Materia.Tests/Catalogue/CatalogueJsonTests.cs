using System.Text.Json;
using Materia.Catalogue;

namespace Materia.Tests.Catalogue;

public sealed class CatalogueJsonTests
{
    private const string Valid =
        """{ "property": "density", "typical": 0.910, "unit": "g/mL", "at": { "temperature": 20 }, "evidence": "memory", "source": "recalled" }""";

    [Fact]
    public void Deserialize_ValidFigure_KeepsTheLastPlace()
    {
        var figure = Read(Valid);

        figure.Property.ShouldBe(Property.Density);
        figure.Typical!.Value.Scale.ShouldBe((byte)3);
        figure.Evidence.ShouldBe(Evidence.Memory);
        figure.Used.ShouldBeFalse();
    }

    [Theory]
    [InlineData("\"unit\"", "\"Unit\"")]
    [InlineData("\"source\"", "\"sorce\"")]
    [InlineData("\"unit\": \"g/mL\",", "")]
    [InlineData("\"typical\": 0.910", "\"typical\": 0.910, \"typical\": 0.920")]
    [InlineData("0.910", "\"0.910\"")]
    [InlineData("0.910", "NaN")]
    [InlineData("0.910", "0,910")]
    [InlineData("0.910", "1e308")]
    [InlineData("\"density\"", "15")]
    [InlineData("\"density\"", "\"thickness\"")]
    [InlineData("\"source\": \"recalled\"", "\"source\": null")]
    [InlineData("\"recalled\" }", "\"recalled\", }")]
    [InlineData("\"recalled\" }", "\"recalled\" } // why")]
    public void Deserialize_AnythingElse_IsRefused(string old, string replacement)
    {
        var text = Valid.Replace(old, replacement, StringComparison.Ordinal);
        text.ShouldNotBe(Valid);

        Should.Throw<JsonException>(() => Read(text));
    }

    [Fact]
    public void Serialize_Figure_LeavesOutWhatIsAbsentAndWritesWhatIsRequired()
    {
        var text = JsonSerializer.Serialize(
            new Figure { Property = Property.MeltingRange, Low = 0, Unit = "Cel", Evidence = Evidence.Published, Source = "s", Note = "beurre de karité" },
            CatalogueJson.Options);

        text.ShouldBe("""{"property":"melting-range","low":0,"unit":"Cel","evidence":"published","source":"s","note":"beurre de karité"}""");
    }

    [Fact]
    public void Serialize_Ingredient_LeavesOutEmptyLists() =>
        JsonSerializer.Serialize(Samples.Ingredient("a-butter"), CatalogueJson.Options)
            .ShouldBe("""{"id":"a-butter","kind":"butter","names":[{"text":"a-butter","kind":"common","evidence":"memory","source":"recalled"}]}""");

    private static Figure Read(string text) => JsonSerializer.Deserialize<Figure>(text, CatalogueJson.Options)!;
}
