using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Materia.Data.Engines;

/// <summary>
/// A table's columns as the model maps them, for writing many rows at once. Change tracking would take some twenty times as long
/// for a whole release, to find out that every row is new.
/// </summary>
internal sealed class TableColumns
{
    private readonly IReadOnlyList<Column> columns;

    /// <summary>Reads the mapping of a row class.</summary>
    public TableColumns(MateriaContext context, Type row)
    {
        var entity = context.Model.FindEntityType(row) ?? throw new ArgumentException($"{row.Name} has no table.", nameof(row));
        Table = entity.GetTableName()!;
        columns = [.. entity.GetProperties().Select(p => new Column(p.GetColumnName(), p.GetColumnType(), p.GetGetter(), p.GetTypeMapping().Converter))];
    }

    /// <summary>The table's name.</summary>
    public string Table { get; }

    /// <summary>The columns' names, with commas between.</summary>
    public string Names => string.Join(", ", columns.Select(c => c.Name));

    /// <summary>The columns' types, as the engine calls them.</summary>
    public IReadOnlyList<string> Types => [.. columns.Select(c => c.Type)];

    /// <summary>How many there are.</summary>
    public int Count => columns.Count;

    /// <summary>The value of a row in a column, as the engine takes it; <see langword="null"/> for a null.</summary>
    public object? Value(object row, int column) => columns[column].Value(row);

    private sealed record Column(
        string Name, string Type, IClrPropertyGetter Getter, Microsoft.EntityFrameworkCore.Storage.ValueConversion.ValueConverter? Converter)
    {
        public object? Value(object row)
        {
            var value = Getter.GetClrValue(row);
            return value is null || Converter is null ? value : Converter.ConvertToProvider(value);
        }
    }
}
