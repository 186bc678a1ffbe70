using Materia.Api.Tests.Databases;
using Materia.Catalogue;
using Materia.Data;

namespace Materia.Api.Tests.Data;

/// <summary>Who may publish when: several nodes at once, and a start after a curator's edit.</summary>
public abstract class PublishingTurnsTests(TestDatabase database) : ReleaseTests(database)
{
    [Fact]
    public async Task PublishAsync_SeveralPublishersOfOneContent_MakeOneRelease()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => PublishAsync(SampleContent.Create()))));

        outcomes.Count(o => o.Changed).ShouldBe(1);
        outcomes.ShouldAllBe(o => o.Number == 1);
        (await HeadersAsync()).Count.ShouldBe(1);
    }

    [Fact]
    public async Task PublishAsync_SeveralPublishersOfDifferentContents_EachGetANumber()
    {
        var contents = Enumerable.Range(0, 4).Select(WithTitle).ToList();

        var outcomes = await Task.WhenAll(contents.Select(content => Task.Run(() => PublishAsync(content))));

        outcomes.Select(o => o.Number).Order().ShouldBe([1, 2, 3, 4]);
        await using var context = Database.CreateContext();
        var store = new ReleaseStore(context);
        for (var i = 0; i < contents.Count; i++)
        {
            Json((await store.ReadAsync(outcomes[i].Number, Cancellation))!.Content).ShouldBe(Json(contents[i]));
        }
    }

    [Fact]
    public async Task PublishSeedAtStartAsync_CurrentReleaseIsFromSeed_PublishesChangedFiles()
    {
        (await PublishSeedAsync(WithTitle(1))).ShouldBe(new PublishOutcome(1, PublishAction.Published));

        (await PublishSeedAsync(WithTitle(2))).ShouldBe(new PublishOutcome(2, PublishAction.Published));
    }

    [Fact]
    public async Task PublishSeedAtStartAsync_CurrentReleaseIsACurators_LeavesIt()
    {
        await PublishSeedAsync(WithTitle(1));
        await PublishAsync(WithTitle(2), ReleaseOrigin.Curation);

        (await PublishSeedAsync(WithTitle(3))).ShouldBe(new PublishOutcome(2, PublishAction.HeldBack));

        Json((await ReadCurrentAsync()).Content).ShouldBe(Json(WithTitle(2)));
    }

    private static CatalogueContent WithTitle(int title)
    {
        var content = SampleContent.Create();
        return content with { Sources = [content.Sources[0] with { Title = $"Title {title}" }, content.Sources[1]] };
    }

    private async Task<PublishOutcome> PublishSeedAsync(CatalogueContent content)
    {
        await using var context = Database.CreateContext();
        return await new ReleaseStore(context).PublishSeedAtStartAsync(content, Now, Cancellation);
    }
}

public sealed class PostgreSqlPublishingTurnsTests(PostgreSqlDatabase database)
    : PublishingTurnsTests(database), IClassFixture<PostgreSqlDatabase>;

public sealed class SqlitePublishingTurnsTests(SqliteFile database) : PublishingTurnsTests(database), IClassFixture<SqliteFile>;
