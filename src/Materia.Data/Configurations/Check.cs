using Materia.Catalogue;
using Materia.Data.Engines;

namespace Materia.Data.Configurations;

/// <summary>Conditions of checks that read the same on each engine.</summary>
internal static class Check
{
    /// <summary>The column is one of the words of an enumeration.</summary>
    public static string IsWord<T>(string column)
        where T : struct, Enum => IsOneOf(column, KebabCase<T>.Words);

    /// <summary>The column is absent or one of some words without a quote in them.</summary>
    public static string IsOneOf(string column, IEnumerable<string> words) => $"{column} IN ({string.Join(", ", words.Select(w => $"'{w}'"))})";

    /// <summary>The column is absent or has something besides blanks.</summary>
    public static string NotBlank(string column) => $"trim({column}) <> ''";

    /// <summary>The ends of a range and the value between them are in order, as far as they are there.</summary>
    public static string InOrder(SqlDialect dialect, string low, string typical, string high)
    {
        var (l, t, h) = (dialect.Number(low), dialect.Number(typical), dialect.Number(high));
        return $"{l} <= {h} AND {l} <= {t} AND {t} <= {h}";
    }

    /// <summary>Each column is absent or lies between two values, both allowed.</summary>
    public static string Between(SqlDialect dialect, int least, int greatest, params string[] columns) =>
        string.Join(" AND ", columns.Select(c => $"{dialect.Number(c)} BETWEEN {least} AND {greatest}"));

    /// <summary>At least one of the columns is there.</summary>
    public static string AnyPresent(params string[] columns) => string.Join(" OR ", columns.Select(c => $"{c} IS NOT NULL"));
}
