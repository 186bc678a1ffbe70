using Microsoft.EntityFrameworkCore.Design;

namespace Materia.Data.DesignTime;

/// <summary>
/// Gives the command line that writes migrations a context; it opens no connection. After a change of the model:
/// <c>dotnet ef migrations add Name --project src/Materia.Data --context SqliteMateriaContext --output-dir Migrations/Sqlite</c>,
/// and the same for <see cref="PostgreSqlContextForMigrations"/>.
/// </summary>
internal sealed class SqliteContextForMigrations : IDesignTimeDbContextFactory<SqliteMateriaContext>
{
    public SqliteMateriaContext CreateDbContext(string[] args) =>
        (SqliteMateriaContext)new MateriaContextFactory(new DatabaseSettings()).CreateDbContext();
}
