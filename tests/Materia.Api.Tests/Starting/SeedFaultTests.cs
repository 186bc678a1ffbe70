using System.Net;
using Materia.Api.Tests.Databases;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Starting;

/// <summary>Seed data with a fault: nothing of it is loaded, and the service says so until it is mended.</summary>
public sealed class SeedFaultTests(SqliteFile database) : IClassFixture<SqliteFile>, IDisposable
{
    private readonly DirectoryInfo seed = Directory.CreateTempSubdirectory("materia-seed-");

    [Fact]
    public async Task Start_FaultySeed_SaysSoAndLoadsOnceMended()
    {
        var original = Path.Combine(AppContext.BaseDirectory, "seed-data");
        foreach (var file in Directory.EnumerateFiles(original, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(seed.FullName, Path.GetRelativePath(original, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        var broken = Path.Combine(seed.FullName, "ingredients", "oil", "broken.json");
        await File.WriteAllTextAsync(broken, "{ \"id\": \"broken\", ", TestContext.Current.CancellationToken);
        await using var application = new MateriaApplication(database.Settings, ("Materia:SeedDirectory", seed.FullName));
        using var client = MateriaApplication.Client(application.Start());

        await ShouldTellTheFaultAsync(client);
        File.Delete(broken);
        await ServedApi.WaitUntilReadyAsync(client);

        (await client.GetJsonAsync("/v1/release"))["number"]!.GetValue<int>().ShouldBe(1);
    }

    public void Dispose() => seed.Delete(recursive: true);

    private static async Task ShouldTellTheFaultAsync(HttpClient client)
    {
        // Reading the seed data takes a second or two, many more on a busy build machine.
        var end = DateTime.UtcNow.AddSeconds(60);
        string detail;
        do
        {
            using var ready = await client.SendAsync(HttpMethod.Get, "/health/ready");
            detail = (await ready.ShouldBeProblemAsync(HttpStatusCode.ServiceUnavailable))["detail"]!.GetValue<string>();
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }
        while (!detail.Contains("seed data", StringComparison.Ordinal) && DateTime.UtcNow < end);

        detail.ShouldContain("seed data has 1 fault");
    }
}
