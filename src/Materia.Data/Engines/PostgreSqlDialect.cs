namespace Materia.Data.Engines;

/// <summary>PostgreSQL: regular expressions, and functions for the check digits (see <see cref="PostgreSqlFunctions"/>). Its numeric type keeps a decimal's scale.</summary>
internal sealed class PostgreSqlDialect : SqlDialect
{
    public override string Number(string column) => column;

    public override string IsCas(string column) => $"cas_is_valid({column})";

    public override string IsEc(string column) => $"ec_is_valid({column})";

    public override string IsKebabCase(string column) => $"{column} ~ '^[a-z0-9]+(-[a-z0-9]+)*$'";

    public override string IsChecksum(string column) => $"{column} ~ '^[0-9a-f]{{64}}$'";
}
