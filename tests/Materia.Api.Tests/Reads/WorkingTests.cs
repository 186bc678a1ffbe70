using System.Net;
using System.Text.Json.Nodes;
using Materia.Api.Tests.Data;
using Materia.Api.Tests.Hosting;
using Materia.Catalogue;

namespace Materia.Api.Tests.Reads;

/// <summary>Descriptions, parts, usage levels, handling and substitution groups over HTTP, read from the made-up <see cref="SampleContent"/>.</summary>
public abstract class WorkingTests(ServedApi api)
{
    [Fact]
    public async Task GetIngredient_WhatIsSaidAboutWorking_IsTheStoredStatements()
    {
        var record = await api.Client.GetJsonAsync("/v1/ingredients/sample-butter");
        var sample = SampleWorking.Add(SampleIngredients.Butter());

        Same(record["description"], sample.Description);
        Same(record["charge"], sample.Charge);
        Same(record["parts"], sample.Parts);
        Same(record["usageLevels"], sample.UsageLevels);
        Same(record["handling"], sample.Handling);
        Same(record["substitutionGroups"], sample.SubstitutionGroups);
        Same(record["bodyNotes"], sample.BodyNotes);
    }

    [Fact]
    public async Task Search_ByChargeAndGroup_FindsAndDescribes()
    {
        var charged = await api.Client.GetJsonAsync("/v1/ingredients?charge=amphoteric,cationic&group=" + SampleWorking.GroupId);

        var hit = charged["items"]!.AsArray().ShouldHaveSingleItem()!;
        hit["id"]!.GetValue<string>().ShouldBe("sample-butter");
        hit["description"]!.GetValue<string>().ShouldBe("Is made up, “quoted” and é.");
        charged["facets"]!["charge"]!.ToJsonString().ShouldBe("""[{"value":"amphoteric","count":1}]""");

        var grouped = await api.Client.GetJsonAsync("/v1/ingredients?group=" + SampleWorking.GroupId);
        grouped["total"]!.GetValue<int>().ShouldBe(2);
        grouped["facets"]!["group"]!.ToJsonString().ShouldBe("""[{"value":"sample-group","count":2}]""");
        grouped["items"]!.AsArray().Single(i => i!["id"]!.GetValue<string>() != "sample-butter")!["description"].ShouldBeNull();
    }

    [Fact]
    public async Task Search_UnknownCharge_SaysWhichThereAre()
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients?charge=neutral", TestContext.Current.CancellationToken);

        (await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest)).ToJsonString().ShouldContain("nonionic");
    }

    [Fact]
    public async Task ListSubstitutionGroups_PutsTheReferenceFirst()
    {
        var groups = await api.Client.GetJsonAsync("/v1/substitution-groups");

        groups["total"]!.GetValue<int>().ShouldBe(1);
        var group = groups["items"]![0]!;
        (group["id"]!.GetValue<string>(), group["name"]!.GetValue<string>(), group["description"]!.GetValue<string>(), group["evidence"]!.GetValue<string>())
            .ShouldBe((SampleWorking.GroupId, "Sample group", "Stands in for any group.", "secondary"));
        var members = group["members"]!.AsArray();

        // By id the wax would come first.
        members.Select(m => m!["id"]!.GetValue<string>()).ShouldBe(["sample-butter", "a-wax-out-of-order"]);
        members.Select(m => m!["reference"]!.GetValue<bool>()).ShouldBe([true, false]);
        members[0]!["swapRatio"].ShouldBeNull();
        members[1]!["swapRatio"]!.ToJsonString().ShouldBe("1.50");
        members[1]!["text"]!.GetValue<string>().ShouldBe("It sets harder.");
        members[1]!["name"]!.GetValue<string>().ShouldBe("A wax");
    }

    [Fact]
    public async Task GetSource_SaysWhatRestsOnIt()
    {
        var source = await api.Client.GetJsonAsync("/v1/sources/recalled");
        var content = SampleContent.Create();
        var butter = content.Ingredients[0].Statements().Where(s => s.Source == SampleContent.Recalled).ToList();

        // The wax: its name and its membership. The tables: one acid, both uses, a limit, and both needs with five effects.
        source["statements"]!["total"]!.GetValue<int>().ShouldBe(butter.Count + 2 + 11);
        var resting = source["ingredients"]!.AsArray();
        resting.Select(i => i!["id"]!.GetValue<string>()).ShouldBe(["a-wax-out-of-order", "sample-butter"]);
        resting[0]!["statements"]!.ToJsonString().ShouldBe("""{"total":2,"published":0,"secondary":0,"commonPractice":0,"memory":2}""");
        resting[1]!["statements"]!["memory"]!.GetValue<int>().ShouldBe(butter.Count(s => s.Evidence == Evidence.Memory));
    }

    private static void Same<T>(JsonNode? served, T stored)
    {
        var expected = JsonNode.Parse(System.Text.Json.JsonSerializer.Serialize(stored, CatalogueJson.Options));
        JsonNode.DeepEquals(served, expected).ShouldBeTrue($"{served?.ToJsonString()} should be {expected?.ToJsonString()}");
    }
}

public sealed class SqliteWorkingTests(CuratedSqliteApi api) : WorkingTests(api), IClassFixture<CuratedSqliteApi>;

public sealed class PostgreSqlWorkingTests(CuratedPostgreSqlApi api) : WorkingTests(api), IClassFixture<CuratedPostgreSqlApi>;
