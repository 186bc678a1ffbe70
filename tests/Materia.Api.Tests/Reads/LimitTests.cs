using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Reads;

/// <summary>The table of limits over HTTP. Figures are those of the instruments named beside them.</summary>
public abstract class LimitTests(ServedApi api)
{
    [Fact]
    public async Task List_Everything_IsTheWholeTable()
    {
        var answer = await api.Client.GetJsonAsync("/v1/limits");

        var items = answer["items"]!.AsArray();
        answer["total"]!.GetValue<int>().ShouldBe(items.Count);
        items.Count.ShouldBe((await api.Client.GetJsonAsync("/v1/release"))["counts"]!["limits"]!.GetValue<int>());
        items.Select(i => i!["id"]!.GetValue<string>()).ShouldBeUnique();
        items.ShouldAllBe(i => i!["members"]!.AsArray().Count > 0);
    }

    /// <summary>Citral, category 5A: 0.15 % (IFRA Standards, 51st Amendment, by the open extraction); Annex III has no limit for it.</summary>
    [Theory]
    [InlineData("citral")]
    [InlineData("CITRAL")]
    [InlineData("5392-40-5")]
    [InlineData("Neral")]
    public async Task List_SubstanceByNameOrNumber_IsTheSameForABodyLotion(string substance)
    {
        var answer = await api.Client.GetJsonAsync($"/v1/limits?substance={substance}&use=body-lotion&market=eu");

        var item = answer["items"]!.AsArray().ShouldHaveSingleItem()!;
        item["id"]!.GetValue<string>().ShouldBe("ifra-citral-5a");
        item["maxPercent"]!.GetValue<decimal>().ShouldBe(0.15m);
        answer["named"]!.AsArray().ShouldHaveSingleItem()!["as"]!.GetValue<string>().ShouldBe("itself");
    }

    /// <summary>Methyl eugenol: 0.0002 % in other leave-on products, 0.001 % in rinse-off ones (Annex III, entry 102).</summary>
    [Theory]
    [InlineData("face-cream", 0.0002)]
    [InlineData("soap-bar", 0.001)]
    [InlineData("perfume-balm", 0.002)]
    public async Task List_Use_GivesTheRowThatBindsIt(string use, double expected)
    {
        var answer = await api.Client.GetJsonAsync($"/v1/limits?substance=methyl%20eugenol&use={use}");

        answer["items"]!.AsArray().Where(i => i!["authority"]!.GetValue<string>() == "eu").ShouldHaveSingleItem()!["maxPercent"]!.GetValue<decimal>().ShouldBe((decimal)expected);
    }

    [Fact]
    public async Task List_NameThatIsPartOfOthers_GivesOnlyItsOwn()
    {
        var items = (await api.Client.GetJsonAsync("/v1/limits?substance=eugenol"))["items"]!.AsArray();

        items.Select(i => i!["substance"]!.GetValue<string>()).Distinct().ShouldBe(["Eugenol"]);
        (await api.Client.GetJsonAsync("/v1/limits?substance=benzoic"))["items"]!.AsArray().Count.ShouldBeGreaterThan(1);
    }

    [Fact]
    public async Task List_Ingredient_GivesItsOwnAndItsConstituentsLimits()
    {
        var answer = await api.Client.GetJsonAsync("/v1/limits?substance=bergamot-oil&use=face-oil");

        answer["ingredient"]!.GetValue<string>().ShouldBe("bergamot-oil");
        var named = answer["named"]!.AsArray().ToDictionary(n => n!["name"]!.GetValue<string>(), n => n!, StringComparer.OrdinalIgnoreCase);
        named["bergapten"]["as"]!.GetValue<string>().ShouldBe("constituent");
        named["bergapten"]["limits"].Texts().ShouldContain("ifra-bergapten");
        named.Values.Where(n => n["as"]!.GetValue<string>() == "itself").SelectMany(n => n["limits"].Texts()).ShouldContain("ifra-bergamot-oil-expressed-1");
    }

    /// <summary>The standard is about the expressed oil; the oil freed of furocoumarins carries the same number and is not meant.</summary>
    [Fact]
    public async Task List_OilFreedOfFurocoumarins_IsNotCalledPhototoxic()
    {
        var ids = (await api.Client.GetJsonAsync("/v1/limits?substance=bergamot-oil-furocoumarin-free"))["items"]!.AsArray().Select(i => i!["id"]!.GetValue<string>()).ToList();

        ids.ShouldNotContain("ifra-bergamot-oil-expressed-1");
        ids.ShouldContain("eu-iii-88");
    }

    [Fact]
    public async Task List_Market_KeepsItsLawBesideStandardsAndOpinions()
    {
        (await AuthoritiesAsync("eu")).ShouldBe(["eu", "ifra", "opinion"], ignoreOrder: true);
        (await AuthoritiesAsync("uk")).ShouldBe(["gb", "eu", "ifra", "opinion"], ignoreOrder: true);
        (await AuthoritiesAsync("us")).ShouldBe(["us", "ifra", "opinion"], ignoreOrder: true);
    }

    [Fact]
    public async Task List_SubstanceThatNoLimitNames_IsEmptyAndNamesTheNearest()
    {
        var answer = await api.Client.GetJsonAsync("/v1/limits?substance=citrall");

        answer["total"]!.GetValue<int>().ShouldBe(0);
        answer["didYouMean"].Texts().ShouldBe(["Citral"]);
        (await api.Client.GetJsonAsync("/v1/limits?substance=50-81-7"))["total"]!.GetValue<int>().ShouldBe(0);
    }

    [Theory]
    [InlineData("use=body-lotions", "?use", "did you mean body-lotion? It is one of shampoo-bar, ")]
    [InlineData("use=x", "?use", "it is one of shampoo-bar, ")]
    [InlineData("market=eur", "?market", "did you mean eu? It is one of eu, uk, us")]
    [InlineData("market=eu,uk", "?market", "keep one")]
    [InlineData("markt=eu", "?markt", "'market'")]
    public async Task List_BadParameter_Is400AndSaysWhatIsAllowed(string query, string key, string advice)
    {
        using var answer = await api.Client.GetAsync("/v1/limits?" + query, TestContext.Current.CancellationToken);

        var errors = (await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest))["errors"]!.AsObject();
        errors.Select(e => e.Key).ShouldBe([key]);
        errors[key].Texts().ShouldContain(m => m.Contains(advice, StringComparison.Ordinal));
    }

    [Fact]
    public async Task GetIngredient_HasTheLimitsThatNameItAndTheirSources()
    {
        var record = await api.Client.GetJsonAsync("/v1/ingredients/tea-tree-oil");

        // SCCS/1681/25: shampoo 2.0 %, face wash 1.0 %, face cream 0.1 %.
        var limits = record["limits"]!.AsArray().Where(l => l!["source"]!.GetValue<string>() == "sccs-1681-25").ToList();
        limits.Select(l => l!["maxPercent"]?.GetValue<decimal>()).ShouldBe([2.0m, 1.0m, 0.1m, null]);
        limits.ShouldAllBe(l => l!["authority"]!.GetValue<string>() == "opinion" && l["part"] == null);
        record["sources"]!["sccs-1681-25"].ShouldNotBeNull();
    }

    private async Task<IReadOnlyList<string>> AuthoritiesAsync(string market) =>
        [.. (await api.Client.GetJsonAsync("/v1/limits?market=" + market))["items"]!.AsArray().Select(i => i!["authority"]!.GetValue<string>()).Distinct()];
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteLimitTests(SqliteApi api) : LimitTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlLimitTests(PostgreSqlApi api) : LimitTests(api);
