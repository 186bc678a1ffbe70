using Materia.Api.Tests.Databases;
using Materia.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Materia.Api.Tests.Data;

public sealed class DatabaseSettingsTests
{
    [Fact]
    public void Faults_Defaults_AreNone() => new DatabaseSettings().Faults().ShouldBeEmpty();

    [Theory]
    [InlineData(DatabaseProvider.PostgreSql, null, "must name a server and a database")]
    [InlineData(DatabaseProvider.PostgreSql, "Host=localhost;Username=u", "must name a server and a database")]
    [InlineData(DatabaseProvider.PostgreSql, "Host=localhost;Colour=blue", "cannot be read as a PostgreSql connection string")]
    [InlineData(DatabaseProvider.Sqlite, "materia.db", "cannot be read as a Sqlite connection string")]
    [InlineData(DatabaseProvider.Sqlite, "Data Source=", "names no file")]
    [InlineData(DatabaseProvider.Sqlite, "Data Source=:memory:", "in memory")]
    [InlineData(DatabaseProvider.Sqlite, "Data Source=/no/such/folder/materia.db", "does not exist")]
    [InlineData((DatabaseProvider)7, "Data Source=materia.db", "must be Sqlite or PostgreSql")]
    public void Faults_SettingsThatCannotWork_SayWhatToDo(DatabaseProvider provider, string? connection, string part)
    {
        var settings = new DatabaseSettings { Provider = provider, ConnectionString = connection };

        settings.Faults().ShouldHaveSingleItem().ShouldContain(part);
        Should.Throw<InvalidOperationException>(() => new ServiceCollection().AddMateriaDatabase(settings)).Message.ShouldContain(part);
    }

    [Theory]
    [InlineData("Host=localhost;Password=s3cret;Colour=blue")]
    [InlineData("Host=localhost;Password=s3cret")]
    public void Faults_ConnectionStringWithAPassword_NeverRepeatIt(string connection)
    {
        var settings = new DatabaseSettings { Provider = DatabaseProvider.PostgreSql, ConnectionString = connection };

        settings.Faults().ShouldHaveSingleItem().ShouldNotContain("s3cret");
    }

    [Fact]
    public async Task AddMateriaDatabase_GoodSettings_GivesAStoreInEachScopeAndContextsOnTheDatabase()
    {
        await using var file = new SqliteFile();
        await using var services = new ServiceCollection().AddMateriaDatabase(file.Settings).BuildServiceProvider(validateScopes: true);
        var contexts = services.GetRequiredService<IDbContextFactory<MateriaContext>>();
        await using (var context = await contexts.CreateDbContextAsync(TestContext.Current.CancellationToken))
        {
            await MateriaDatabase.MigrateAsync(context, TestContext.Current.CancellationToken);
        }

        await using var scope = services.CreateAsyncScope();
        var store = scope.ServiceProvider.GetRequiredService<ReleaseStore>();

        (await store.ListAsync(TestContext.Current.CancellationToken)).ShouldBeEmpty();
    }

    [Fact]
    public void AddMateriaDatabase_ServerThatIsDown_DoesNotStopTheStart()
    {
        var settings = new DatabaseSettings { Provider = DatabaseProvider.PostgreSql, ConnectionString = "Host=/no/such/socket;Database=materia" };

        using var services = new ServiceCollection().AddMateriaDatabase(settings).BuildServiceProvider();

        services.GetRequiredService<IDbContextFactory<MateriaContext>>().ShouldNotBeNull();
    }
}
