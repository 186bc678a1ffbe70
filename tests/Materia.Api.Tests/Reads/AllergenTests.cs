using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Reads;

/// <summary>The table of fragrance allergens over HTTP, and what the table of product types says besides.</summary>
public abstract class AllergenTests(ServedApi api)
{
    /// <summary>81 entries with the declaration clause: 24 old and 57 added by (EU) 2023/1545 (Commission export of Annex III, 11 November 2025).</summary>
    [Theory]
    [InlineData("/v1/allergens", 81)]
    [InlineData("/v1/allergens?market=eu", 81)]
    [InlineData("/v1/allergens?market=uk", 24)]
    [InlineData("/v1/allergens?market=us", 0)]
    [InlineData("/v1/allergens?asOf=2026-07-31", 24)]
    [InlineData("/v1/allergens?asOf=2026-08-01", 81)]
    [InlineData("/v1/allergens?market=uk&asOf=2026-08-01", 24)]
    public async Task List_MarketAndDay_GivesWhatTheLabelMustName(string url, int expected)
    {
        var answer = await api.Client.GetJsonAsync(url);

        answer["total"]!.GetValue<int>().ShouldBe(expected);
        answer["items"]!.AsArray().Count.ShouldBe(expected);
        (answer["rule"] is not null).ShouldBe(url.Contains("market", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("citral", "Citral")]
    [InlineData("GERANIAL", "Citral")]
    [InlineData("106-26-3", "Citral")]
    [InlineData("Lavandula Hybrida Oil", "Lavandula Oil/Extract")]
    public async Task List_Text_FindsByLabelMemberAndNumber(string text, string name)
    {
        var answer = await api.Client.GetJsonAsync("/v1/allergens?text=" + Uri.EscapeDataString(text));

        var item = answer["items"]!.AsArray().ShouldHaveSingleItem()!;
        item["declarationName"]!.GetValue<string>().ShouldBe(name);
        item["leaveOnThreshold"]!.GetValue<decimal>().ShouldBe(0.001m);
        item["rinseOffThreshold"]!.GetValue<decimal>().ShouldBe(0.01m);
    }

    [Theory]
    [InlineData("asOf=2026-02-30", "?asOf", "no day of the calendar")]
    [InlineData("asOf=tomorrow", "?asOf", "such as 2026-08-01")]
    [InlineData("market=gb", "?market", "It is one of eu, uk, us")]
    [InlineData("name=x", "?name", "text, market, asOf")]
    public async Task List_BadParameter_Is400AndSaysWhatIsAllowed(string query, string key, string advice)
    {
        using var answer = await api.Client.GetAsync("/v1/allergens?" + query, TestContext.Current.CancellationToken);

        var errors = (await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest))["errors"]!.AsObject();
        errors.Select(e => e.Key).ShouldBe([key]);
        errors[key].Texts().ShouldContain(m => m.Contains(advice, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("lip-balm", "1")]
    [InlineData("deodorant-balm", "2")]
    [InlineData("body-lotion", "5A")]
    [InlineData("face-cream", "5B")]
    [InlineData("shampoo-bar", "9")]
    public async Task ListUses_SayCategoryAndCaution(string id, string category)
    {
        var use = (await api.Client.GetJsonAsync("/v1/uses"))["items"]!.AsArray().Single(u => u!["id"]!.GetValue<string>() == id)!;

        use["ifraCategory"]!.GetValue<string>().ShouldBe(category);
        use["caution"]!.GetValue<string>().ShouldEndWith(".");
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteAllergenTests(SqliteApi api) : AllergenTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlAllergenTests(PostgreSqlApi api) : AllergenTests(api);
