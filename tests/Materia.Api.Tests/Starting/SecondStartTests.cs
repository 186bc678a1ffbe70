using Materia.Api.Tests.Hosting;
using Materia.Data;

namespace Materia.Api.Tests.Starting;

/// <summary>A start on a database that holds the seed data already changes nothing.</summary>
public abstract class SecondStartTests(ServedApi api)
{
    [Fact]
    public async Task Start_SecondNodeOnTheSameDatabase_ServesTheSameReleaseAndStoresNothing()
    {
        var before = await HeadersAsync();
        await using var second = new MateriaApplication(api.Database.Settings);
        using var client = MateriaApplication.Client(second.Start());
        await ServedApi.WaitUntilReadyAsync(client);

        using var first = await api.Client.SendAsync(HttpMethod.Get, "/v1/ingredients/shea-butter");
        using var again = await client.SendAsync(HttpMethod.Get, "/v1/ingredients/shea-butter");

        again.Headers.ETag.ShouldBe(first.Headers.ETag);
        (await again.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken))
            .ShouldBe(await first.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        (await HeadersAsync()).ShouldBe(before);
        before.Count.ShouldBe(1);
    }

    private async Task<IReadOnlyList<ReleaseHeader>> HeadersAsync()
    {
        await using var context = api.Database.CreateContext();
        return await new ReleaseStore(context).ListAsync(TestContext.Current.CancellationToken);
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteSecondStartTests(SqliteApi api) : SecondStartTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlSecondStartTests(PostgreSqlApi api) : SecondStartTests(api);
