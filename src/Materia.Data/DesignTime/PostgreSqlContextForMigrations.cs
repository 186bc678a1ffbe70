using Microsoft.EntityFrameworkCore.Design;

namespace Materia.Data.DesignTime;

/// <summary>
/// Gives the command line that writes migrations a context; it opens no connection. After a change of the model:
/// <c>dotnet ef migrations add Name --project src/Materia.Data --context PostgreSqlMateriaContext --output-dir Migrations/PostgreSql</c>,
/// and the same for <see cref="SqliteContextForMigrations"/>.
/// </summary>
internal sealed class PostgreSqlContextForMigrations : IDesignTimeDbContextFactory<PostgreSqlMateriaContext>
{
    public PostgreSqlMateriaContext CreateDbContext(string[] args) =>
        (PostgreSqlMateriaContext)new MateriaContextFactory(
            new DatabaseSettings { Provider = DatabaseProvider.PostgreSql, ConnectionString = "Host=localhost;Database=materia" }).CreateDbContext();
}
