using System.Globalization;
using System.Net;
using Materia.Api.Tests.Databases;
using Materia.Api.Tests.Hosting;
using Materia.Data;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Materia.Api.Tests.Starting;

/// <summary>A database that cannot be used when the service starts: it says so, keeps trying, and recovers by itself.</summary>
public sealed class DatabaseDownTests(PostgreSqlServer server)
{
    [Fact]
    public async Task Start_PostgreSqlDown_SaysSoAndRecoversWhenItComesUp()
    {
        await using var database = new PostgreSqlDatabase(server);
        await database.InitializeAsync();
        await using var relay = new Relay(database.Settings.ConnectionString!);
        await using var application = new MateriaApplication(new DatabaseSettings { Provider = DatabaseProvider.PostgreSql, ConnectionString = relay.ConnectionString });
        using var client = MateriaApplication.Client(application.Start());

        await ShouldNotBeReadyAsync(client, "PostgreSql", new NpgsqlConnectionStringBuilder(relay.ConnectionString).Port.ToString(CultureInfo.InvariantCulture));
        relay.Open();
        await ServedApi.WaitUntilReadyAsync(client);

        (await client.GetJsonAsync("/v1/release"))["number"]!.GetValue<int>().ShouldBe(1);
    }

    [Fact]
    public async Task Start_SqliteFileThatIsNoDatabase_SaysSoAndRecoversWhenItIsGone()
    {
        await using var database = new SqliteFile();
        var file = new SqliteConnectionStringBuilder(database.Settings.ConnectionString).DataSource;
        await File.WriteAllTextAsync(file, string.Concat(Enumerable.Repeat("this is not a database ", 100)), TestContext.Current.CancellationToken);
        await using var application = new MateriaApplication(database.Settings);
        using var client = MateriaApplication.Client(application.Start());

        await ShouldNotBeReadyAsync(client, "Sqlite", file);
        SqliteConnection.ClearAllPools();
        File.Delete(file);
        await ServedApi.WaitUntilReadyAsync(client);

        (await client.GetJsonAsync("/v1/release"))["number"]!.GetValue<int>().ShouldBe(1);
    }

    private static async Task ShouldNotBeReadyAsync(HttpClient client, string reason, string secret)
    {
        // The first failure takes as long as the driver needs to give up.
        var end = DateTime.UtcNow.AddSeconds(60);
        string detail;
        do
        {
            using var ready = await client.SendAsync(HttpMethod.Get, "/health/ready");
            detail = (await ready.ShouldBeProblemAsync(HttpStatusCode.ServiceUnavailable))["detail"]!.GetValue<string>();
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }
        while (!detail.Contains("cannot be used", StringComparison.Ordinal) && DateTime.UtcNow < end);

        detail.ShouldContain(reason);
        detail.ShouldNotContain(secret);
        using var read = await client.SendAsync(HttpMethod.Get, "/v1/ingredients");
        (await read.ShouldBeProblemAsync(HttpStatusCode.ServiceUnavailable))["type"]!.GetValue<string>().ShouldBe("/problems/not-ready");
        int.Parse(read.Headers.GetValues("Retry-After").Single(), CultureInfo.InvariantCulture).ShouldBeInRange(1, 60);
        using var live = await client.SendAsync(HttpMethod.Get, "/health/live");
        live.StatusCode.ShouldBe(HttpStatusCode.OK);
    }
}
