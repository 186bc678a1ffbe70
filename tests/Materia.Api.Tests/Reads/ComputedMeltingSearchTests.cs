using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Reads;

/// <summary>The search by computed melting over HTTP.</summary>
public abstract class ComputedMeltingSearchTests(ServedApi api)
{
    [Fact]
    public async Task Search_SolidAtRoomAndMeltedOnSkin_MarksTheFiguresAsComputed()
    {
        var page = await api.Client.GetJsonAsync("/v1/ingredients?solidAt20=25..&solidAt32=..10&sort=-solidAt20&limit=100");

        var items = page["items"]!.AsArray();
        items.ShouldNotBeEmpty();
        var methods = (await api.Client.GetJsonAsync("/v1/methods"))["items"]!.AsArray().Select(m => m!["id"]!.GetValue<string>()).ToList();
        var solids = new List<decimal>();
        foreach (var item in items)
        {
            var figures = item!["matched"]!["figures"]!.AsArray();
            figures.Select(f => f!["group"]!.GetValue<string>()).ShouldBe(["solidAt20", "solidAt32"]);
            figures.ShouldAllBe(f => f!["computed"]!.GetValue<bool>() && f["property"] == null && f["unit"]!.GetValue<string>() == "%");
            methods.ShouldContain(figures[0]!["method"]!.GetValue<string>());
            solids.Add(figures[0]!["low"]!.GetValue<decimal>());
            figures[0]!["low"]!.GetValue<decimal>().ShouldBeGreaterThanOrEqualTo(25);
            figures[1]!["high"]!.GetValue<decimal>().ShouldBeLessThanOrEqualTo(10);
        }

        solids.ShouldBe(solids.OrderDescending());
    }

    [Fact]
    public async Task Search_StoredFigure_IsNotMarkedAsComputed()
    {
        var figures = (await api.Client.GetJsonAsync("/v1/ingredients?iodine=50..80&limit=5"))["items"]!.AsArray().SelectMany(i => i!["matched"]!["figures"]!.AsArray()).ToList();

        figures.ShouldNotBeEmpty();
        figures.ShouldAllBe(f => f!["computed"] == null && f["method"] == null);
    }

    [Fact]
    public async Task Search_ComputedFigure_IsThatOfTheRecord()
    {
        var hit = (await api.Client.GetJsonAsync("/v1/ingredients?text=coconut%20oil&clearPoint=-10..&limit=1"))["items"]![0]!;
        var melting = (await api.Client.GetJsonAsync($"/v1/ingredients/{hit["id"]}?include=melting"))["computed"]!["melting"]!;

        // A tenth by rounding, and the two hundredths within which each of the two is found.
        hit["matched"]!["figures"]![0]!["low"]!.GetValue<double>().ShouldBe(melting["clearPoint"]!["value"]!.GetValue<double>(), 0.07);
    }

    [Theory]
    [InlineData("?solidAt20=40", "?solidAt20", "is not a range")]
    [InlineData("?clearPoint=40..30", "?clearPoint", "write the lower number first")]
    [InlineData("?sort=solid-at20", "?sort", "solidAt20, -solidAt20, solidAt25, -solidAt25, solidAt32, -solidAt32, solidAt35, -solidAt35, clearPoint, -clearPoint")]
    [InlineData("?solidAt30=40..", "?solidAt30", "Did you mean 'solidAt20'?")]
    public async Task Search_Faulty_Is400(string query, string key, string expected)
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients" + query, TestContext.Current.CancellationToken);

        string.Join(' ', (await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest))["errors"]![key].Texts()).ShouldContain(expected);
    }

    [Fact]
    public async Task Search_SortedByAComputedFigureToTheEnd_GivesEachIngredientOnce()
    {
        var total = (await api.Client.GetJsonAsync("/v1/release"))["counts"]!["ingredients"]!.GetValue<int>();

        var ids = await Paging.AllIdsAsync(api.Client, "/v1/ingredients?sort=clearPoint&limit=50");

        ids.Count.ShouldBe(total);
        ids.Distinct().Count().ShouldBe(total);
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteComputedMeltingSearchTests(SqliteApi api) : ComputedMeltingSearchTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlComputedMeltingSearchTests(PostgreSqlApi api) : ComputedMeltingSearchTests(api);
