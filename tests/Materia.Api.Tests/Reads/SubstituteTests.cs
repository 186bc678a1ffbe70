using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Reads;

/// <summary>Neighbours of ingredients over HTTP.</summary>
public abstract class SubstituteTests(ServedApi api)
{
    [Fact]
    public async Task Get_CocoaButter_GivesNeighboursInWholeForm()
    {
        var answer = await api.Client.GetJsonAsync("/v1/ingredients/cocoa-butter/substitutes?limit=5");

        answer["id"]!.GetValue<string>().ShouldBe("cocoa-butter");
        answer["total"]!.GetValue<int>().ShouldBeGreaterThan(5);
        answer["method"]!.GetValue<string>().ShouldBe("neighbour-distance");
        var items = answer["items"]!.AsArray();
        items.Count.ShouldBe(5);
        foreach (var item in items.Select(i => i!.AsObject()))
        {
            foreach (var member in new[] { "id", "name", "kind", "distance", "purposeGap", "coverage" })
            {
                item.ShouldContainKey(member);
            }

            var solid = item["differences"]!.AsArray().Select(d => d!.AsObject()).Where(d => d["property"]!.GetValue<string>() == "solid-content").ToList();
            solid.Select(d => d["temperature"]!.GetValue<double>()).ShouldBe([10, 20, 25, 32, 40], ignoreOrder: true);
            solid.ShouldAllBe(d => d.ContainsKey("asked") && d.ContainsKey("candidate") && d.ContainsKey("difference") && d.ContainsKey("steps"));
        }

        items.SelectMany(i => i!["warnings"]?.AsArray() ?? []).ShouldAllBe(w => w!["kind"] != null && w["text"] != null);
    }

    [Fact]
    public async Task Get_BeeswaxWithoutAnimals_HasCandelillaAndItsRatio()
    {
        var answer = await api.Client.GetJsonAsync("/v1/ingredients/beeswax/substitutes?excludeOrigin=animal&limit=50");

        var items = answer["items"]!.AsArray();
        items.Select(i => i!["id"]!.GetValue<string>()).ShouldNotContain("lanolin");
        items.Single(i => i!["id"]!.GetValue<string>() == "candelilla-wax")!["swapRatio"]!["value"]!.GetValue<decimal>().ShouldBe(0.5m);
    }

    [Fact]
    public async Task Get_SameCall_IsHeldByItsEntityTag()
    {
        const string url = "/v1/ingredients/kaolin/substitutes?kind=clay";
        using var first = await api.Client.GetAsync(url, TestContext.Current.CancellationToken);
        using var second = await api.Client.SendAsync(HttpMethod.Get, url, ("If-None-Match", first.Headers.ETag!.ToString()));

        second.StatusCode.ShouldBe(HttpStatusCode.NotModified);
    }

    [Fact]
    public async Task Get_UnknownId_Is404WithTheNearest()
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients/coco-buter/substitutes", TestContext.Current.CancellationToken);

        (await answer.ShouldBeProblemAsync(HttpStatusCode.NotFound))["detail"]!.GetValue<string>().ShouldContain("cocoa-butter");
    }

    [Theory]
    [InlineData("pantry=shae-butter", "?pantry", "shea-butter")]
    [InlineData("kind=buter", "?kind", "butter")]
    [InlineData("excludeOrigin=treenut", "?excludeOrigin", "tree-nut")]
    [InlineData("maxComedogenic=6", "?maxComedogenic", "0 to 5")]
    [InlineData("limit=0", "?limit", "1 to 50")]
    [InlineData("limits=3", "?limits", "limit")]
    public async Task Get_BadFilter_Is400AtThePlace(string query, string place, string expected)
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients/cocoa-butter/substitutes?" + query, TestContext.Current.CancellationToken);

        var errors = (await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest))["errors"]!.AsObject();
        string.Join(' ', errors[place].Texts()).ShouldContain(expected);
    }

    [Fact]
    public async Task GetNeeds_OfASubject_AreOnlyThose()
    {
        var items = (await api.Client.GetJsonAsync("/v1/needs?subject=choice"))["items"]!.AsArray();

        items.Select(i => i!["id"]!.GetValue<string>()).ShouldBe(["fragrance-free", "vegan", "no-tree-nuts", "no-palm"]);
        items.SelectMany(i => i!["effects"]!.AsArray()).ShouldAllBe(e => e!["source"] != null && e["evidence"] != null && e["reason"] != null);
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteSubstituteTests(SqliteApi api) : SubstituteTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlSubstituteTests(PostgreSqlApi api) : SubstituteTests(api);
