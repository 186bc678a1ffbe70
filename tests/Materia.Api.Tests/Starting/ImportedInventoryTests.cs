using System.Net;
using System.Text.Json.Nodes;
using Materia.Api.Tests.Databases;
using Materia.Api.Tests.Hosting;
using Materia.Seed.Cli;

namespace Materia.Api.Tests.Starting;

/// <summary>The official inventory, imported by the command line, is served beside the catalogue and found below it.</summary>
public sealed class ImportedInventoryTests(ImportedInventoryTests.Inventory served) : IClassFixture<ImportedInventoryTests.Inventory>
{
    private HttpClient Client => served.Client;

    [Fact]
    public async Task Search_NameThatIsNotCurated_IsFoundBelowAndSaysSo()
    {
        var answer = await Client.GetJsonAsync("/v1/ingredients?text=madeupia");

        answer["total"]!.GetValue<int>().ShouldBe(0);
        var item = answer["inventory"]!["items"]!.AsArray().ShouldHaveSingleItem()!;
        item["inciName"]!.GetValue<string>().ShouldBe("MADEUPIA TESTIS SEED EXTRACT");
        item["curated"]!.GetValue<bool>().ShouldBeFalse();
    }

    [Fact]
    public async Task Search_NameThatIsCurated_ShowsOnlyWhatIsNot()
    {
        var answer = await Client.GetJsonAsync("/v1/ingredients?text=kaolin");

        answer["items"]![0]!["id"]!.GetValue<string>().ShouldBe("kaolin");
        answer["inventory"].ShouldBeNull();
    }

    [Theory]
    [InlineData("/v1/ingredients?text=madeupia&kind=oil")]
    [InlineData("/v1/ingredients?text=madeupia&melting=..36")]
    public async Task Search_AskingForMoreThanNames_LeavesTheInventoryOut(string url) =>
        (await Client.GetJsonAsync(url))["inventory"].ShouldBeNull();

    [Fact]
    public async Task Inventory_CuratedName_LinksToTheIngredients()
    {
        var answer = await Client.GetJsonAsync("/v1/inventory?text=1332-58-7");

        var kaolin = answer["items"]!.AsArray().ShouldHaveSingleItem()!;
        kaolin["curated"]!.GetValue<bool>().ShouldBeTrue();
        kaolin["ingredients"]!.AsArray().Select(i => i!.GetValue<string>()).ShouldContain("kaolin");
        answer["imported"].ShouldNotBeNull();
    }

    [Fact]
    public async Task Inventory_ByFunctionPageByPage_GivesEachOnce()
    {
        var names = new List<string>();
        for (string? url = "/v1/inventory?function=skin-conditioning&limit=1"; url is not null;)
        {
            using var response = await Client.GetAsync(url, TestContext.Current.CancellationToken);
            var page = JsonNode.Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!;
            names.AddRange(page["items"]!.AsArray().Select(i => i!["inciName"]!.GetValue<string>()));
            url = response.Headers.TryGetValues("Link", out var links) ? links.Single().Split('<', '>')[1] : null;
        }

        names.ShouldBe(["MADEUPIA TESTIS SEED EXTRACT", "OTHERIA TESTIS LEAF WATER"]);
    }

    [Theory]
    [InlineData("/v1/inventory?limit=0", "?limit")]
    [InlineData("/v1/inventory?after=zzz", "?after")]
    [InlineData("/v1/inventory?name=x", "?name")]
    public async Task Inventory_BadQuery_IsAProblemThatNamesIt(string url, string member)
    {
        using var response = await Client.GetAsync(url, TestContext.Current.CancellationToken);

        response.StatusCode.ShouldBe(HttpStatusCode.BadRequest);
        (await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).ShouldContain(member);
    }

    /// <summary>The service on a SQLite file into which the command line imported three entries.</summary>
    public sealed class Inventory() : ServedApi(new SqliteFile())
    {
        private const string Csv =
            """
            INCI name,CAS No,EC No,Function
            KAOLIN,1332-58-7,310-194-1,"ABRASIVE, ABSORBENT"
            MADEUPIA TESTIS SEED EXTRACT,-,-,SKIN CONDITIONING
            OTHERIA TESTIS LEAF WATER,-,-,"SKIN CONDITIONING, FRAGRANCE"
            """;

        /// <inheritdoc/>
        protected override async Task PrepareAsync()
        {
            var file = Path.GetTempFileName();
            await File.WriteAllTextAsync(file, Csv);
            await using var output = new StringWriter();
            await using var error = new StringWriter();
            var database = Database.Settings.ConnectionString!.Split('=')[1].Split(';')[0];
            (await SeedCommand.RunAsync(["inventory", file, "--sqlite", database], output, error, CancellationToken.None)).ShouldBe(ExitCode.Done, error.ToString());
            (await SeedCommand.RunAsync(["inventory", file, "--sqlite", database], output, error, CancellationToken.None)).ShouldBe(ExitCode.Done, error.ToString());
            output.ToString().ShouldContain("3 rows, 3 entries, 0 faults; imported");
            output.ToString().ShouldContain("nothing changed");
            error.ToString().ShouldBeEmpty();
            File.Delete(file);
        }
    }
}
