using Materia.Api.Tests.Databases;
using Materia.Api.Tests.Hosting;
using Materia.Data;
using Materia.Seed;

namespace Materia.Api.Tests.Starting;

/// <summary>A start with other seed data publishes a release of its own, and what clients hold of the one before is no longer good.</summary>
public abstract class NewReleaseTests(TestDatabase database)
{
    [Fact]
    public async Task Start_SeedDataChanged_ServesReleaseTwoUnderOtherEntityTags()
    {
        await using (var context = database.CreateContext())
        {
            await MateriaDatabase.MigrateAsync(context, TestContext.Current.CancellationToken);
            var content = SeedReader.Read(Path.Combine(AppContext.BaseDirectory, "seed-data")).Content!;
            await new ReleaseStore(context).PublishAsync(
                content with { Ingredients = [.. content.Ingredients.Skip(1)] }, ReleaseOrigin.Seed, DateTimeOffset.UnixEpoch, TestContext.Current.CancellationToken);
        }

        await using var application = new MateriaApplication(database.Settings);
        using var client = MateriaApplication.Client(application.Start());
        await ServedApi.WaitUntilReadyAsync(client);

        (await client.GetJsonAsync("/v1/release"))["number"]!.GetValue<int>().ShouldBe(2);
        using var answer = await client.SendAsync(HttpMethod.Get, "/v1/uses");
        answer.Headers.GetValues("Materia-Release").ShouldBe(["2"]);
        var tagOfReleaseOne = await FirstReleaseTagAsync();
        answer.Headers.ETag!.Tag.ShouldNotBe(tagOfReleaseOne);
    }

    private static async Task<string> FirstReleaseTagAsync()
    {
        await using var other = new SqliteFile();
        await using var application = new MateriaApplication(other.Settings);
        using var client = MateriaApplication.Client(application.Start());
        await ServedApi.WaitUntilReadyAsync(client);
        using var answer = await client.SendAsync(HttpMethod.Get, "/v1/uses");
        answer.Headers.GetValues("Materia-Release").ShouldBe(["1"]);
        return answer.Headers.ETag!.Tag;
    }
}

public sealed class SqliteNewReleaseTests(SqliteFile database) : NewReleaseTests(database), IClassFixture<SqliteFile>;

public sealed class PostgreSqlNewReleaseTests(PostgreSqlDatabase database) : NewReleaseTests(database), IClassFixture<PostgreSqlDatabase>;
