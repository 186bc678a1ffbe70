using System.Text.Json;
using System.Text.Json.Nodes;
using Materia.Api.Evaluations;
using Materia.Chemistry;

namespace Materia.Api.Tests.Evaluations;

/// <summary>How solid contents are written.</summary>
public sealed class SolidPercentTests
{
    [Theory]
    [InlineData(0.0004, "0")]
    [InlineData(-0.0004, "0")]
    [InlineData(0.126, "0.13")]
    [InlineData(5.4321, "5.43")]
    [InlineData(83.4567, "83.46")]
    [InlineData(100, "100")]
    public void Write_SolidContent_IsRoundedToAHundredth(double percent, string written)
    {
        var point = JsonSerializer.SerializeToNode(new SolidContentPoint(-3, percent, percent, percent), EvaluationJson.Options)!;

        foreach (var member in (string[])["percent", "low", "high"])
        {
            point[member]!.ToJsonString().ShouldBe(written);
        }

        point["temperature"]!.ToJsonString().ShouldBe("-3");
    }

    [Fact]
    public void Write_Texture_IsRoundedAlike() =>
        JsonNode.Parse(JsonSerializer.Serialize(new TexturePoint(20, "soft", 5.4321, null), EvaluationJson.Options))!["percent"]!.ToJsonString().ShouldBe("5.43");
}
