using System.Globalization;
using Materia.Api.Tests.Databases;
using Microsoft.EntityFrameworkCore;

namespace Materia.Api.Tests.Data;

/// <summary>SQL past the model, as anybody with access to the database could send it.</summary>
internal static class Raw
{
    public static IReadOnlyList<string> ContentTables { get; } =
    [
        "source", "fatty_acid", "product_use", "ingredient", "former_id", "ingredient_origin", "origin_allergen_family",
        "ingredient_name", "registry_number", "ingredient_function", "property_figure", "fatty_acid_profile", "fatty_acid_share",
        "triacylglycerol_profile", "triacylglycerol_share", "constituent", "ingredient_description", "ingredient_charge",
        "composite_part", "usage_level", "handling_note", "substitution_group", "substitution_membership", "body_note",
        "comedogenic_note", "caution",
    ];

    /// <summary>Runs a statement and gives the number of rows that it changed.</summary>
    public static async Task<int> ExecuteAsync(TestDatabase database, string sql)
    {
        await using var context = database.CreateContext();
        return await context.Database.ExecuteSqlRawAsync(sql, TestContext.Current.CancellationToken);
    }

    /// <summary>Runs a query for one number.</summary>
    public static async Task<long> CountAsync(TestDatabase database, string sql)
    {
        await using var context = database.CreateContext();
        var connection = context.Database.GetDbConnection();
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToInt64(await command.ExecuteScalarAsync(TestContext.Current.CancellationToken), CultureInfo.InvariantCulture);
    }
}
