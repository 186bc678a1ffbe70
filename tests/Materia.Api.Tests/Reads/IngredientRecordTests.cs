using System.Net;
using System.Text.Json.Nodes;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Reads;

/// <summary>Whole records over HTTP.</summary>
public abstract class IngredientRecordTests(ServedApi api)
{
    [Fact]
    public async Task Get_Known_IsTheWholeRecordWithEverySourceItCites()
    {
        var record = await api.Client.GetJsonAsync("/v1/ingredients/shea-butter");

        record["id"]!.GetValue<string>().ShouldBe("shea-butter");
        record["kind"]!.GetValue<string>().ShouldBe("butter");
        record["release"]!.GetValue<int>().ShouldBe(1);
        record["names"]!.AsArray()[0]!["kind"]!.GetValue<string>().ShouldBe("common");
        record["fattyAcidProfiles"]!.AsArray().ShouldNotBeEmpty();
        record["triacylglycerolProfiles"]![0]!["shares"]!.AsArray().Select(s => s!["species"]!.GetValue<string>()).ShouldContain("SOS");
        var cited = Members(record, "source").Concat(Members(record, "checkIn")).Distinct().ToArray();
        cited.ShouldNotBeEmpty();
        foreach (var key in cited)
        {
            record["sources"]![key]!["title"]!.GetValue<string>().ShouldNotBeNullOrWhiteSpace();
        }
    }

    [Fact]
    public async Task Get_EveryIngredientThatTheSearchLists_Is200()
    {
        var ids = await Paging.AllIdsAsync(api.Client, "/v1/ingredients?limit=100");

        foreach (var id in ids)
        {
            (await api.Client.GetJsonAsync("/v1/ingredients/" + id))["id"]!.GetValue<string>().ShouldBe(id);
        }

        ids.Count.ShouldBe((await api.Client.GetJsonAsync("/v1/release"))["counts"]!["ingredients"]!.GetValue<int>());
    }

    [Fact]
    public async Task Get_WithComedogenicGrades_EachHasItsCaveatAndTheCaveatsSources()
    {
        var found = await api.Client.GetJsonAsync("/v1/ingredients?comedogenic=0..5&limit=1");
        var record = await api.Client.GetJsonAsync("/v1/ingredients/" + found["items"]![0]!["id"]);

        var grades = record["comedogenic"]!.AsArray();
        grades.ShouldNotBeEmpty();
        foreach (var grade in grades)
        {
            grade!["caveat"]!.GetValue<string>().ShouldContain("rabbit ears");
            foreach (var key in grade["caveatSources"].Texts())
            {
                record["sources"]![key].ShouldNotBeNull();
            }
        }
    }

    [Fact]
    public async Task Get_MisspeltId_Is404WithTheNearest()
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients/shae-buter", TestContext.Current.CancellationToken);

        var problem = await answer.ShouldBeProblemAsync(HttpStatusCode.NotFound);
        problem["detail"]!.GetValue<string>().ShouldContain("shea-butter");
    }

    [Theory]
    [InlineData("/v1/ingredients/no-such-thing-at-all-xyzzy")]
    [InlineData("/v1/ingredients/%00")]
    [InlineData("/v1/ingredients/..%2f..%2fetc")]
    [InlineData("/v1/ingredients/%F0%9F%A5%A5")]
    public async Task Get_Nonsense_Is404(string url)
    {
        using var answer = await api.Client.GetAsync(url, TestContext.Current.CancellationToken);

        // A zero byte never reaches the routes: the server refuses it as a bad request.
        answer.StatusCode.ShouldBeOneOf(HttpStatusCode.NotFound, HttpStatusCode.BadRequest);
    }

    private static IEnumerable<string> Members(JsonNode? node, string name) => node switch
    {
        JsonObject found => found.SelectMany(m => m.Key == name && m.Value is JsonValue value ? [value.GetValue<string>()] : Members(m.Value, name)),
        JsonArray list => list.SelectMany(item => Members(item, name)),
        _ => [],
    };
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteIngredientRecordTests(SqliteApi api) : IngredientRecordTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlIngredientRecordTests(PostgreSqlApi api) : IngredientRecordTests(api);
