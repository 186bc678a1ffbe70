using System.Net;
using Materia.Api.Tests.Data;
using Materia.Api.Tests.Databases;
using Materia.Api.Tests.Hosting;
using Materia.Data;

namespace Materia.Api.Tests.Reads;

/// <summary>A release that a curator made stays when the service starts with other seed files, and its former ids lead on.</summary>
public abstract class FormerIdTests(ServedApi api)
{
    [Fact]
    public async Task Get_FormerId_Is301ToThePresentOne()
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients/old-butter", TestContext.Current.CancellationToken);

        answer.StatusCode.ShouldBe(HttpStatusCode.MovedPermanently);
        answer.Headers.Location!.ToString().ShouldBe("/v1/ingredients/sample-butter");
        (await api.Client.GetJsonAsync(answer.Headers.Location.ToString()))["formerIds"].Texts().ShouldContain("old-butter");
    }

    [Fact]
    public async Task Get_FormerIdWithQuery_LeadsOnWithIt()
    {
        using var answer = await api.Client.GetAsync("/v1/ingredients/old-butter?include=melting", TestContext.Current.CancellationToken);

        answer.Headers.Location!.ToString().ShouldBe("/v1/ingredients/sample-butter?include=melting");
    }

    [Fact]
    public async Task Start_CuratorsReleaseInTheDatabase_IsServedAndNotReplacedBySeedFiles()
    {
        var release = await api.Client.GetJsonAsync("/v1/release");

        release["number"]!.GetValue<int>().ShouldBe(1);
        release["counts"]!["ingredients"]!.GetValue<int>().ShouldBe(SampleContent.Create().Ingredients.Count);
    }
}

/// <summary>The service on a database in which a curator published the sample content.</summary>
public abstract class CuratedApi(TestDatabase database) : ServedApi(database)
{
    protected override async Task PrepareAsync()
    {
        await using var context = Database.CreateContext();
        await MateriaDatabase.MigrateAsync(context, CancellationToken.None);
        await new ReleaseStore(context).PublishAsync(SampleContent.Create(), ReleaseOrigin.Curation, DateTimeOffset.UnixEpoch, CancellationToken.None);
    }
}

public sealed class CuratedSqliteApi() : CuratedApi(new SqliteFile());

public sealed class CuratedPostgreSqlApi(PostgreSqlServer server) : CuratedApi(new PostgreSqlDatabase(server));

public sealed class SqliteFormerIdTests(CuratedSqliteApi api) : FormerIdTests(api), IClassFixture<CuratedSqliteApi>;

public sealed class PostgreSqlFormerIdTests(CuratedPostgreSqlApi api) : FormerIdTests(api), IClassFixture<CuratedPostgreSqlApi>;
