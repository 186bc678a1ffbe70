using System.Net;
using System.Text.Json.Nodes;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Reads;

/// <summary>The ingredient search over HTTP.</summary>
public abstract class IngredientSearchTests(ServedApi api)
{
    [Theory]
    [InlineData("karité", "shea-butter")]
    [InlineData("shae buter", "shea-butter")]
    [InlineData("61789-91-1", "jojoba-oil")]
    [InlineData("rizinusöl", "castor-oil")]
    [InlineData("cera alba", "beeswax")]
    public async Task Search_AnyNameOrNumber_FindsTheIngredientFirst(string text, string id)
    {
        var page = await api.Client.GetJsonAsync("/v1/ingredients?text=" + Uri.EscapeDataString(text));

        page["items"]![0]!["id"]!.GetValue<string>().ShouldBe(id);
        page["items"]![0]!["matched"]!["names"]!.AsArray().ShouldNotBeEmpty();
    }

    [Fact]
    public async Task Search_NoParameters_CountsAllAndGivesTwenty()
    {
        var page = await api.Client.GetJsonAsync("/v1/ingredients");

        var total = page["total"]!.GetValue<int>();
        total.ShouldBeGreaterThan(20);
        page["items"]!.AsArray().Count.ShouldBe(20);
        page["facets"]!["kind"]!.AsArray().Sum(f => f!["count"]!.GetValue<int>()).ShouldBe(total);
    }

    [Theory]
    [InlineData("limit=7")]
    [InlineData("limit=7&sort=-melting")]
    [InlineData("limit=3&kind=butter&sort=iodine")]
    [InlineData("limit=5&text=oil")]
    public async Task Search_FollowedToTheEnd_GivesEachMatchOnce(string query)
    {
        var total = (await api.Client.GetJsonAsync("/v1/ingredients?" + query))["total"]!.GetValue<int>();

        var ids = await Paging.AllIdsAsync(api.Client, "/v1/ingredients?" + query);

        total.ShouldBeGreaterThan(7);
        ids.Count.ShouldBe(total);
        ids.Distinct().Count().ShouldBe(total);
    }

    [Fact]
    public async Task Search_ButterMeltingBelowSkin_EachLiesWithin()
    {
        // 32 Cel is the round figure for skin that the trade uses; any other bound would test the same.
        var page = await api.Client.GetJsonAsync("/v1/ingredients?kind=butter&melting=..32&rangeMatch=within&limit=100");

        var items = page["items"]!.AsArray();
        items.ShouldNotBeEmpty();
        foreach (var item in items)
        {
            item!["kind"]!.GetValue<string>().ShouldBe("butter");
            foreach (var figure in item["matched"]!["figures"]!.AsArray())
            {
                figure!["group"]!.GetValue<string>().ShouldBe("melting");
                figure["high"]!.GetValue<decimal>().ShouldBeLessThanOrEqualTo(32);
            }
        }
    }

    [Fact]
    public async Task Search_TwoAcids_BothHold()
    {
        var page = await api.Client.GetJsonAsync("/v1/ingredients?acid=18:1n-9:40..&acid=18:2n-6:..10&limit=100");

        var items = page["items"]!.AsArray();
        items.ShouldNotBeEmpty();
        items.ShouldAllBe(i => i!["matched"]!["shares"]!.AsArray().Count == 2);
    }

    [Fact]
    public async Task Search_KindsByCommaOrRepeated_AreTheSame()
    {
        var commas = await api.Client.GetJsonAsync("/v1/ingredients?kind=wax,clay&limit=100");
        var repeated = await api.Client.GetJsonAsync("/v1/ingredients?kind=wax&kind=clay&limit=100");

        commas["total"]!.GetValue<int>().ShouldBeGreaterThan(0);
        Ids(repeated).ShouldBe(Ids(commas));
        commas["items"]!.AsArray().Select(i => i!["kind"]!.GetValue<string>()).Distinct().Order().ShouldBe(["clay", "wax"]);
    }

    [Fact]
    public async Task Search_SortedByMelting_DescendsAsAsked()
    {
        var up = Ids(await api.Client.GetJsonAsync("/v1/ingredients?melting=-50..&sort=melting&limit=100"));
        var down = Ids(await api.Client.GetJsonAsync("/v1/ingredients?melting=-50..&sort=-melting&limit=100"));

        up.Length.ShouldBeGreaterThan(10);
        down.ShouldNotBe(up);
    }

    [Fact]
    public async Task Search_Misspelt_SaysWhatMayBeMeant()
    {
        var page = await api.Client.GetJsonAsync("/v1/ingredients?text=" + Uri.EscapeDataString("shae buter"));

        page["didYouMean"]!.AsArray().Select(s => s!["ingredient"]!.GetValue<string>()).ShouldContain("shea-butter");
    }

    [Fact]
    public async Task Search_FigureOfAHit_IsAStoredStatementWithItsSource()
    {
        var page = await api.Client.GetJsonAsync("/v1/ingredients?text=shea%20butter&limit=1");

        var figure = page["items"]![0]!["figures"]![0]!;
        figure["evidence"]!.GetValue<string>().ShouldNotBeNullOrEmpty();
        var record = await api.Client.GetJsonAsync("/v1/ingredients/shea-butter");
        record["properties"]!.AsArray().ShouldContain(f => JsonNode.DeepEquals(f, figure));
    }

    [Theory]
    [InlineData("\" OR * AND (")]
    [InlineData("+-&&||!(){}[]^\"~*?:\\/")]
    [InlineData("\u0000\ud83e\udd65")]
    public async Task Search_AnyText_IsNeverAnError(string text)
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients?text=" + Uri.EscapeDataString(text), TestContext.Current.CancellationToken);

        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
    }

    [Fact]
    public async Task Suggest_Prefix_OffersTheIngredient()
    {
        var page = await api.Client.GetJsonAsync("/v1/suggestions?text=shea%20b&limit=3");

        page["items"]!.AsArray().Select(i => i!["ingredient"]!.GetValue<string>()).ShouldContain("shea-butter");
        page["total"]!.GetValue<int>().ShouldBe(page["items"]!.AsArray().Count);
        page["total"]!.GetValue<int>().ShouldBeInRange(1, 3);
    }

    private static string[] Ids(JsonObject page) => [.. page["items"]!.AsArray().Select(i => i!["id"]!.GetValue<string>())];
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteIngredientSearchTests(SqliteApi api) : IngredientSearchTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlIngredientSearchTests(PostgreSqlApi api) : IngredientSearchTests(api);
