using Microsoft.EntityFrameworkCore;

namespace Materia.Data.Engines;

/// <summary>SQLite: decimals are text, patterns are GLOBs, and the check digits are worked out place by place.</summary>
internal sealed class SqliteDialect : SqlDialect
{
    public override string Number(string column) => $"CAST({column} AS REAL)";

    public override string IsCas(string column)
    {
        // A start before the text's first character gives an empty text, which counts as 0; nine digits at most precede the check digit.
        var sum = string.Join(" + ", Enumerable.Range(1, 9).Select(place =>
            $"{place} * substr(replace({column}, '-', ''), -{place + 1}, 1)"));
        return $"length({column}) BETWEEN 7 AND 12 AND {column} GLOB '[1-9]*-[0-9][0-9]-[0-9]' " +
            $"AND length(replace({column}, '-', '')) = length({column}) - 2 AND replace({column}, '-', '') NOT GLOB '*[^0-9]*' " +
            $"AND ({sum}) % 10 = CAST(substr({column}, -1) AS INTEGER)";
    }

    public override string IsEc(string column)
    {
        var sum = string.Join(" + ", Enumerable.Range(1, 6).Select(place =>
            $"{place} * substr(replace({column}, '-', ''), {place}, 1)"));
        return $"{column} GLOB '[0-9][0-9][0-9]-[0-9][0-9][0-9]-[0-9]' AND ({sum}) % 11 = CAST(substr({column}, -1) AS INTEGER)";
    }

    public override string IsKebabCase(string column) =>
        $"{column} GLOB '[a-z0-9]*' AND {column} GLOB '*[a-z0-9]' AND {column} NOT GLOB '*[^a-z0-9-]*' AND {column} NOT GLOB '*--*'";

    public override string IsChecksum(string column) => $"length({column}) = 64 AND {column} NOT GLOB '*[^0-9a-f]*'";

    public override string? IsDecimal(string column) =>
        $"ltrim({column}, '-') GLOB '[0-9]*' AND {column} GLOB '*[0-9]' AND ltrim({column}, '-') NOT GLOB '*[^0-9.]*' " +
        $"AND length({column}) - length(ltrim({column}, '-')) <= 1 AND length({column}) - length(replace({column}, '.', '')) <= 1";

    // The engine has no decimal type, and the provider's own text form drops trailing zeros: 0.910 would come back as 0.91.
    public override void MapTypes(ModelConfigurationBuilder types) =>
        types.Properties<decimal>().HaveConversion<DecimalTextConverter>().HaveColumnType("TEXT");
}
