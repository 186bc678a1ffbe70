using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Materia.Data.Engines;

/// <summary>Names of tables, columns, keys and indexes in snake case, so that SQL written by hand needs no quotes.</summary>
internal static class SnakeCaseNames
{
    /// <summary>The snake-case form of a C# name.</summary>
    public static string Of(string name) => JsonNamingPolicy.SnakeCaseLower.ConvertName(name);

    /// <summary>Names everything in the model; a table is called after its row class, without the word row.</summary>
    public static void Apply(ModelBuilder model)
    {
        var entities = model.Model.GetEntityTypes().ToList();
        foreach (var entity in entities)
        {
            entity.SetTableName(Of(entity.ClrType.Name[..^"Row".Length]));
            foreach (var property in entity.GetProperties())
            {
                property.SetColumnName(Of(property.Name));
            }
        }

        foreach (var entity in entities)
        {
            NameConstraints(entity);
        }
    }

    private static void NameConstraints(IMutableEntityType entity)
    {
        var table = entity.GetTableName();
        foreach (var key in entity.GetKeys())
        {
            key.SetName(key.IsPrimaryKey() ? $"pk_{table}" : $"ak_{table}_{Last(key.Properties)}");
        }

        foreach (var key in entity.GetForeignKeys())
        {
            key.SetConstraintName($"fk_{table}_{key.PrincipalEntityType.GetTableName()}_{Last(key.Properties)}");
        }

        foreach (var index in entity.GetIndexes())
        {
            index.SetDatabaseName($"ix_{table}_{Last(index.Properties)}");
        }
    }

    private static string Last(IReadOnlyList<IMutableProperty> properties) => properties[^1].GetColumnName();
}
