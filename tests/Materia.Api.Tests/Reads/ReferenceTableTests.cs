using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Reads;

/// <summary>The reference tables and the release over HTTP.</summary>
public abstract class ReferenceTableTests(ServedApi api)
{
    [Theory]
    [InlineData("/v1/fatty-acids", "symbol", "18:1n-9")]
    [InlineData("/v1/sources", "id", "recalled")]
    [InlineData("/v1/uses", "id", "hair-mask-rinse-off")]
    [InlineData("/v1/limits", "id", "eu-iii-98-rinse-off-hair")]
    [InlineData("/v1/allergens", "id", "linalool")]
    [InlineData("/v1/needs", "id", "coily")]
    [InlineData("/v1/kinds", "kind", "ph-adjuster")]
    [InlineData("/v1/functions", "function", "skin-conditioning-emollient")]
    public async Task List_Table_IsWholeAndHoldsAKnownRow(string url, string key, string known)
    {
        var table = await api.Client.GetJsonAsync(url);

        var items = table["items"]!.AsArray();
        table["total"]!.GetValue<int>().ShouldBe(items.Count);
        items.Select(i => i![key]!.GetValue<string>()).ShouldContain(known);
        items.Select(i => i![key]!.GetValue<string>()).ShouldBeUnique();
    }

    [Fact]
    public async Task GetSource_EveryListed_Is200()
    {
        var listed = await api.Client.GetJsonAsync("/v1/sources");

        foreach (var source in listed["items"]!.AsArray())
        {
            var id = source!["id"]!.GetValue<string>();
            (await api.Client.GetJsonAsync("/v1/sources/" + id))["title"]!.GetValue<string>().ShouldBe(source["title"]!.GetValue<string>());
        }
    }

    [Fact]
    public async Task GetSource_Misspelt_Is404WithTheNearest()
    {
        using var answer = await api.Client.GetAsync("/v1/sources/recaled", TestContext.Current.CancellationToken);

        (await answer.ShouldBeProblemAsync(HttpStatusCode.NotFound))["detail"]!.GetValue<string>().ShouldContain("recalled");
    }

    [Theory]
    [InlineData("/v1/kinds")]
    [InlineData("/v1/functions")]
    public async Task List_KindsAndFunctions_CountWhatTheirSearchFinds(string url)
    {
        foreach (var row in (await api.Client.GetJsonAsync(url))["items"]!.AsArray())
        {
            var found = await api.Client.GetJsonAsync(row!["search"]!.GetValue<string>() + "&limit=1");
            found["total"]!.GetValue<int>().ShouldBe(row["ingredients"]!.GetValue<int>(), row["search"]!.GetValue<string>());
        }
    }

    [Fact]
    public async Task ListKinds_Titles_AreWords()
    {
        var titles = (await api.Client.GetJsonAsync("/v1/kinds"))["items"]!.AsArray().ToDictionary(k => k!["kind"]!.GetValue<string>(), k => k!["title"]!.GetValue<string>());

        (titles["butter"], titles["essential-oil"], titles["ph-adjuster"]).ShouldBe(("Butter", "Essential oil", "pH adjuster"));
    }

    [Fact]
    public async Task ListSources_GradesAddUpAndEachIsRestedOn()
    {
        foreach (var source in (await api.Client.GetJsonAsync("/v1/sources"))["items"]!.AsArray())
        {
            var counts = source!["statements"]!;
            var grades = new[] { "published", "secondary", "commonPractice", "memory" }.Sum(g => counts[g]!.GetValue<int>());
            grades.ShouldBe(counts["total"]!.GetValue<int>(), source["id"]!.GetValue<string>());
            source["ingredients"].ShouldBeNull();
        }
    }

    [Fact]
    public async Task List_Again_Is304()
    {
        foreach (var url in new[] { "/v1/kinds", "/v1/functions", "/v1/substitution-groups", "/v1/sources" })
        {
            using var first = await api.Client.SendAsync(HttpMethod.Get, url);
            using var second = await api.Client.SendAsync(HttpMethod.Get, url, ("If-None-Match", first.Headers.ETag!.ToString()));
            second.StatusCode.ShouldBe(HttpStatusCode.NotModified, url);
        }
    }

    [Fact]
    public async Task GetRelease_CountsWhatTheTablesHold()
    {
        var release = await api.Client.GetJsonAsync("/v1/release");

        release["number"]!.GetValue<int>().ShouldBe(1);
        release["checksum"]!.GetValue<string>().ShouldMatch("^[0-9a-f]{64}$");
        var counts = release["counts"]!;
        counts["sources"]!.GetValue<int>().ShouldBe((await api.Client.GetJsonAsync("/v1/sources"))["total"]!.GetValue<int>());
        counts["fattyAcids"]!.GetValue<int>().ShouldBe((await api.Client.GetJsonAsync("/v1/fatty-acids"))["total"]!.GetValue<int>());
        counts["uses"]!.GetValue<int>().ShouldBe((await api.Client.GetJsonAsync("/v1/uses"))["total"]!.GetValue<int>());
        counts["substitutionGroups"]!.GetValue<int>().ShouldBe((await api.Client.GetJsonAsync("/v1/substitution-groups"))["total"]!.GetValue<int>());
        counts["limits"]!.GetValue<int>().ShouldBe((await api.Client.GetJsonAsync("/v1/limits"))["total"]!.GetValue<int>());
        counts["allergens"]!.GetValue<int>().ShouldBe((await api.Client.GetJsonAsync("/v1/allergens"))["total"]!.GetValue<int>());
        counts["ingredients"]!.GetValue<int>().ShouldBe((await api.Client.GetJsonAsync("/v1/ingredients"))["total"]!.GetValue<int>());
        counts["ingredientsByKind"]!.AsObject().Sum(k => k.Value!.GetValue<int>()).ShouldBe(counts["ingredients"]!.GetValue<int>());
    }

    [Fact]
    public async Task ListMethods_NamesSourcesThatExist()
    {
        var methods = await api.Client.GetJsonAsync("/v1/methods");

        var items = methods["items"]!.AsArray();
        items.ShouldNotBeEmpty();
        foreach (var source in items.SelectMany(m => m!["sources"].Texts()).Distinct())
        {
            (await api.Client.GetJsonAsync("/v1/sources/" + source))["id"]!.GetValue<string>().ShouldBe(source);
        }
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteReferenceTableTests(SqliteApi api) : ReferenceTableTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlReferenceTableTests(PostgreSqlApi api) : ReferenceTableTests(api);
