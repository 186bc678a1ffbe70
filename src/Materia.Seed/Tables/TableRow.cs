using System.Globalization;
using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Tables;

/// <summary>One row of a table. Each way of taking a field adds a fault when the field does not fit and then gives a default.</summary>
internal sealed class TableRow(Place place, IReadOnlyList<string> columns, string[] fields, FaultList faults)
{
    private const NumberStyles Decimal = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    /// <summary>True when a field taken so far did not fit.</summary>
    public bool HasFault { get; private set; }

    /// <summary>True when the row has a field for each column.</summary>
    public bool FitsHeader()
    {
        if (fields.Length != columns.Count)
        {
            Fault($"the row has {fields.Length} fields where the header has {columns.Count}; put text with a comma or a quote in quotes");
        }

        return !HasFault;
    }

    /// <summary>A text, or <see langword="null"/> when the field is empty.</summary>
    public string? Text(string column)
    {
        var text = Field(column);
        if (text.Length > 0 && (char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1])))
        {
            Fault($"{column} \"{text}\" begins or ends with a blank; take the blank away");
        }

        return text.Length == 0 ? null : text;
    }

    /// <summary>A text that must not be empty.</summary>
    public string Required(string column)
    {
        if (Text(column) is { } text)
        {
            return text;
        }

        Fault($"{column} is empty; fill it in");
        return "";
    }

    /// <summary>A whole number; an empty field is 0 when <paramref name="optional"/>.</summary>
    public int Whole(string column, bool optional = false)
    {
        var text = optional ? Text(column) ?? "0" : Required(column);
        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && text.Length > 0)
        {
            Fault($"{column} \"{text}\" is no whole number");
        }

        return value;
    }

    /// <summary>A number, or <see langword="null"/> when the field is empty.</summary>
    public decimal? Number(string column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        if (!decimal.TryParse(text, Decimal, CultureInfo.InvariantCulture, out var value))
        {
            Fault($"{column} \"{text}\" is no number; write digits with a point for decimals");
        }

        return value;
    }

    /// <summary>A number that must be there.</summary>
    public decimal RequiredNumber(string column) =>
        Field(column).Length == 0 ? Required(column).Length : Number(column) ?? 0;

    /// <summary><c>true</c>, or <c>false</c> or an empty field.</summary>
    public bool Flag(string column)
    {
        var text = Text(column);
        if (text is not (null or "true" or "false"))
        {
            Fault($"{column} \"{text}\" is neither true nor false");
        }

        return text == "true";
    }

    /// <summary>The value of an enumeration's kebab-case word.</summary>
    /// <typeparam name="T">The enumeration.</typeparam>
    public T Word<T>(string column)
        where T : struct, Enum
    {
        var text = Required(column);
        if (!KebabCase<T>.TryParse(text, out var value) && text.Length > 0)
        {
            Fault($"{column} \"{text}\" is unknown; write one of {string.Join(", ", KebabCase<T>.Words)}");
        }

        return value;
    }

    /// <summary>The values of an enumeration's kebab-case words, parted by semicolons; none for an empty field.</summary>
    /// <typeparam name="T">The enumeration.</typeparam>
    public IReadOnlyList<T> Words<T>(string column)
        where T : struct, Enum
    {
        var values = new List<T>();
        foreach (var text in List(column))
        {
            if (KebabCase<T>.TryParse(text, out var value))
            {
                values.Add(value);
            }
            else
            {
                Fault($"{column} \"{text}\" is unknown; write one of {string.Join(", ", KebabCase<T>.Words)}");
            }
        }

        return values;
    }

    /// <summary>Texts parted by semicolons; none for an empty field.</summary>
    public IReadOnlyList<string> List(string column)
    {
        if (Text(column) is not { } text)
        {
            return [];
        }

        var items = text.Split(';');
        if (Array.Exists(items, i => i.Length == 0 || char.IsWhiteSpace(i[0]) || char.IsWhiteSpace(i[^1])))
        {
            Fault($"{column} \"{text}\" holds an empty item or a blank beside a semicolon; write a;b;c");
            return [];
        }

        if (items.Distinct(StringComparer.Ordinal).Count() < items.Length)
        {
            Fault($"{column} \"{text}\" names something twice; name it once");
        }

        return items;
    }

    /// <summary>A day, or <see langword="null"/> when the field is empty.</summary>
    public DateOnly? Date(string column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var value))
        {
            Fault($"{column} \"{text}\" is no day; write it as 2026-07-31");
        }

        return value;
    }

    private string Field(string column)
    {
        for (var i = 0; i < columns.Count; i++)
        {
            if (string.Equals(columns[i], column, StringComparison.Ordinal))
            {
                return fields[i];
            }
        }

        throw new ArgumentException($"The table has no column {column}.", nameof(column));
    }

    private void Fault(string message)
    {
        HasFault = true;
        faults.Add(place, message);
    }
}
