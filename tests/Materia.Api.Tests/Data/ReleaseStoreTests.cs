using System.Globalization;
using Materia.Api.Tests.Databases;
using Materia.Catalogue;
using Materia.Data;

namespace Materia.Api.Tests.Data;

/// <summary>Publishing and reading releases on an engine.</summary>
public abstract class ReleaseStoreTests(TestDatabase database) : ReleaseTests(database)
{
    [Fact]
    public async Task ReadCurrentAsync_NothingPublished_IsNull()
    {
        await using var context = Database.CreateContext();
        var store = new ReleaseStore(context);

        (await store.ReadCurrentAsync(Cancellation)).ShouldBeNull();
        (await store.ReadOriginAsync(Cancellation)).ShouldBeNull();
        (await store.ReadAsync(1, Cancellation)).ShouldBeNull();
    }

    [Fact]
    public async Task PublishAsync_EmptyDatabase_IsReleaseOneAndReadsBackAsItWas()
    {
        var content = SampleContent.Create();

        (await PublishAsync(content)).ShouldBe(new PublishOutcome(1, PublishAction.Published));

        var release = await ReadCurrentAsync();
        release.Number.ShouldBe(1);
        release.Published.ShouldBe(new DateTimeOffset(2026, 3, 4, 3, 6, 7, TimeSpan.Zero).AddTicks(1_234_560));
        release.Checksum.ShouldBe(CatalogueJson.Checksum(content));
        Json(release.Content).ShouldBe(Json(content));
        CatalogueJson.Checksum(release.Content).ShouldBe(CatalogueJson.Checksum(content));
    }

    [Fact]
    public async Task PublishAsync_DecimalsWithTrailingZeros_KeepTheirScale()
    {
        await PublishAsync(SampleContent.Create());

        var figure = (await ReadCurrentAsync()).FindIngredient("sample-butter")!.Properties[0];

        // Equal decimals may differ in scale, their texts do not.
        figure.Low!.Value.ToString(CultureInfo.InvariantCulture).ShouldBe("0.910");
        figure.Typical!.Value.ToString(CultureInfo.InvariantCulture).ShouldBe("0.9150");
        figure.At!.Temperature!.Value.ToString(CultureInfo.InvariantCulture).ShouldBe("20.0");
    }

    [Fact]
    public async Task PublishAsync_WhatIsSaidAboutWorking_ComesBackMemberByMember()
    {
        await PublishAsync(SampleContent.Create());

        var content = (await ReadCurrentAsync()).Content;
        var butter = content.Ingredients[0];
        var sample = SampleWorking.Add(SampleIngredients.Butter());

        butter.Description.ShouldBe(sample.Description);
        butter.Charge.ShouldBe(sample.Charge);
        butter.Parts.ShouldBe(sample.Parts);
        butter.UsageLevels.ShouldBe(sample.UsageLevels);
        butter.Handling.ShouldBe(sample.Handling);
        butter.SubstitutionGroups.ShouldBe(sample.SubstitutionGroups);
        butter.BodyNotes.ShouldBe(sample.BodyNotes);
        content.Ingredients[1].SubstitutionGroups[0].SwapRatio!.Value.ToString(CultureInfo.InvariantCulture).ShouldBe("1.50");
        content.SubstitutionGroups.ShouldBe([SampleWorking.Group()]);
    }

    [Fact]
    public async Task PublishAsync_LimitsAndAllergens_ComeBackMemberByMember()
    {
        await PublishAsync(SampleContent.Create());

        var content = (await ReadCurrentAsync()).Content;
        var limit = content.Limits[0];
        var sample = SampleRegulation.Limits()[0];

        content.Limits.Select(l => l.Id).ShouldBe(["z-limit", "a-limit"]);
        limit.Members.ShouldBe(sample.Members);
        limit.Members[1].Factor.ToString(CultureInfo.InvariantCulture).ShouldBe("0.8470");
        limit.ExceptIngredients.ShouldBe(["sample-butter"]);
        limit.Scope.Sites.ShouldBe([BodySite.Lips, BodySite.Hair]);
        limit.Scope.Uses.ShouldBe(["sample-balm"]);
        limit.Scope.ExceptUses.ShouldBe(["sample-mask"]);
        limit.Scope.IfraCategories.ShouldBe(["7B", "1"]);
        limit.MaxPercent!.Value.ToString(CultureInfo.InvariantCulture).ShouldBe("0.50");
        (limit.Below, limit.WarningAbove, limit.From, limit.OldStockUntil).ShouldBe((true, 0.10m, new DateOnly(2025, 11, 1), new DateOnly(2027, 4, 30)));
        content.Allergens[0].Members.ShouldBe(SampleRegulation.Allergens()[0].Members);
        (content.Allergens[0].NewProductsUntil, content.Allergens[1].NewProductsUntil).ShouldBe((new DateOnly(2026, 7, 31), null));
        (content.Uses[1].IfraCategory, content.Uses[1].Caution).ShouldBe(("1", "Part of it is swallowed."));
    }

    [Fact]
    public async Task PublishAsync_ListsInAnyOrder_KeepThatOrder()
    {
        await PublishAsync(SampleContent.Create());

        var content = (await ReadCurrentAsync()).Content;

        content.Ingredients.Select(i => i.Id).ShouldBe(["sample-butter", "a-wax-out-of-order"]);
        content.FattyAcids.Select(a => a.Symbol).ShouldBe(["18:1n-9", "16:0-ol"]);
        content.Ingredients[0].FormerIds.ShouldBe(["z-butter", "old-butter"]);
        content.Ingredients[0].Names.Select(n => n.Kind).ShouldBe([NameKind.Common, NameKind.Synonym, NameKind.Inci]);
        content.Ingredients[0].FattyAcidProfiles.Select(p => p.Kind).ShouldBe([ProfileKind.Range, ProfileKind.Sample, ProfileKind.Sample]);
        content.Ingredients[0].TriacylglycerolProfiles.SelectMany(p => p.Shares).Select(s => s.Species).ShouldBe(["SOS", "SLO+OOO", "LaMP"]);
        content.Ingredients[0].Origin!.AllergenFamilies.ShouldBe([AllergenFamily.Wool, AllergenFamily.Bee]);
    }

    [Fact]
    public async Task PublishAsync_SameContentTwice_ChangesNothing()
    {
        await PublishAsync(SampleContent.Create());

        (await PublishAsync(SampleContent.Create())).ShouldBe(new PublishOutcome(1, PublishAction.Unchanged));

        (await HeadersAsync()).Count.ShouldBe(1);
    }

    [Fact]
    public async Task PublishAsync_OtherContent_IsTheNextReleaseAndTheFirstStaysReadable()
    {
        var first = SampleContent.Create();
        var second = SampleContent.Other();
        await PublishAsync(first);

        (await PublishAsync(second)).ShouldBe(new PublishOutcome(2, PublishAction.Published));

        await using var context = Database.CreateContext();
        var store = new ReleaseStore(context);
        Json((await store.ReadCurrentAsync(Cancellation))!.Content).ShouldBe(Json(second));
        Json((await store.ReadAsync(1, Cancellation))!.Content).ShouldBe(Json(first));
        (await store.ReadAsync(3, Cancellation)).ShouldBeNull();
    }

    [Fact]
    public async Task PublishAsync_BackToAnOlderState_IsANewRelease()
    {
        var first = SampleContent.Create();
        await PublishAsync(first);
        await PublishAsync(SampleContent.Other());

        (await PublishAsync(first)).ShouldBe(new PublishOutcome(3, PublishAction.Published));
    }

    [Fact]
    public async Task ListAsync_TwoReleases_GivesHeadersNewestFirst()
    {
        await PublishAsync(SampleContent.Create());
        await PublishAsync(SampleContent.Other(), ReleaseOrigin.Curation);

        var headers = await HeadersAsync();

        headers.Select(h => (h.Number, h.Origin)).ShouldBe([(2, ReleaseOrigin.Curation), (1, ReleaseOrigin.Seed)]);

        // The sample counted by hand: 4 names, 1 origin, 2 numbers, 1 function, 3 figures, 3 shares of acids, 3 of
        // triacylglycerols, 2 constituents, 1 description, 1 charge, 2 parts, 2 usage levels, 2 notes on handling, 2 memberships, 1 effect, 1 grade,
        // 1 caution, 2 fatty acids, 2 uses, 1 group, 2 limits, 2 allergens, 2 needs with 6 effects.
        (headers[1].IngredientCount, headers[1].StatementCount, headers[1].SourceCount).ShouldBe((2, 49, 2));
    }

    [Fact]
    public async Task DeletingARelease_TakesItsContentAndNoOther()
    {
        await PublishAsync(SampleContent.Create());
        await PublishAsync(SampleContent.Other());

        (await Raw.ExecuteAsync(Database, "DELETE FROM release WHERE number = 1")).ShouldBe(1);

        foreach (var table in Raw.ContentTables)
        {
            (await Raw.CountAsync(Database, $"SELECT count(*) FROM {table} WHERE release = 1")).ShouldBe(0, table);
        }

        Json((await ReadCurrentAsync()).Content).ShouldBe(Json(SampleContent.Other()));
    }
}

public sealed class PostgreSqlReleaseStoreTests(PostgreSqlDatabase database) : ReleaseStoreTests(database), IClassFixture<PostgreSqlDatabase>;

public sealed class SqliteReleaseStoreTests(SqliteFile database) : ReleaseStoreTests(database), IClassFixture<SqliteFile>;
