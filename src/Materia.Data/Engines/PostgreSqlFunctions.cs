namespace Materia.Data.Engines;

/// <summary>
/// The functions that PostgreSQL's checks call. The first migration makes them, therefore they never change: another
/// rule is another function in another migration.
/// </summary>
internal static class PostgreSqlFunctions
{
    /// <summary>Makes <c>cas_is_valid</c>, the rule of <see cref="Catalogue.CasNumber.IsValid"/>: places are counted from the right, before the check digit.</summary>
    public const string CreateCasIsValid =
        """
        CREATE FUNCTION cas_is_valid(number text) RETURNS boolean
        LANGUAGE sql IMMUTABLE STRICT PARALLEL SAFE AS $$
            SELECT CASE WHEN number ~ '^[1-9][0-9]{1,6}-[0-9]{2}-[0-9]$' THEN (
                SELECT sum(place * substr(digits, place, 1)::integer) % 10 = right(number, 1)::integer
                FROM (SELECT reverse(replace(left(number, -2), '-', '')) AS digits) AS reversed,
                    generate_series(1, length(digits)) AS place)
            ELSE false END
        $$;
        """;

    /// <summary>Makes <c>ec_is_valid</c>, the rule of <see cref="Catalogue.EcNumber.IsValid"/>: places are counted from the left.</summary>
    public const string CreateEcIsValid =
        """
        CREATE FUNCTION ec_is_valid(number text) RETURNS boolean
        LANGUAGE sql IMMUTABLE STRICT PARALLEL SAFE AS $$
            SELECT CASE WHEN number ~ '^[0-9]{3}-[0-9]{3}-[0-9]$' THEN (
                SELECT sum(place * substr(digits, place, 1)::integer) % 11 = right(number, 1)::integer
                FROM (SELECT replace(left(number, -2), '-', '') AS digits) AS plain,
                    generate_series(1, 6) AS place)
            ELSE false END
        $$;
        """;

    /// <summary>Drops both functions.</summary>
    public const string Drop = "DROP FUNCTION cas_is_valid(text); DROP FUNCTION ec_is_valid(text);";
}
