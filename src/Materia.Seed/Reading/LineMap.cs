using System.Globalization;
using System.Text.Json;

namespace Materia.Seed.Reading;

/// <summary>The line of each part of a JSON text, by JSON Pointer. Built only for files with a fault.</summary>
internal sealed class LineMap
{
    private readonly Dictionary<string, int> lines = new(StringComparer.Ordinal) { [""] = 1 };

    private LineMap()
    {
    }

    /// <summary>
    /// Walks <paramref name="utf8"/>. A member stands at the line of its name, an element of a list where it begins; of a
    /// repeated member the last is kept. A text that breaks off is mapped as far as it can be read.
    /// </summary>
    public static LineMap Of(ReadOnlySpan<byte> utf8)
    {
        var map = new LineMap();
        var reader = new Utf8JsonReader(utf8);
        try
        {
            map.Walk(ref reader, utf8);
        }
        catch (JsonException)
        {
            // The syntax fault is reported where the file is read; the lines before it still serve.
        }

        return map;
    }

    /// <summary>The line of <paramref name="pointer"/>, or of the nearest part around it.</summary>
    public int LineOf(string pointer)
    {
        int line;
        while (!lines.TryGetValue(pointer, out line))
        {
            pointer = JsonPointer.Parent(pointer);
        }

        return line;
    }

    private void Walk(ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8)
    {
        // One entry for each open object or list; Next counts the elements of a list and is -1 in an object.
        var open = new Stack<(string Pointer, int Next)>();
        var member = "";
        var line = 1;
        var counted = 0;
        while (reader.Read())
        {
            var start = (int)reader.TokenStartIndex;
            line += utf8[counted..start].Count((byte)'\n');
            counted = start;
            if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
            {
                open.Pop();
                continue;
            }

            if (reader.TokenType == JsonTokenType.PropertyName)
            {
                member = JsonPointer.Append(open.Peek().Pointer, reader.GetString()!);
                lines[member] = line;
                continue;
            }

            var pointer = Enter(open, member, line);
            if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
            {
                open.Push((pointer, reader.TokenType == JsonTokenType.StartArray ? 0 : -1));
            }
        }
    }

    private string Enter(Stack<(string Pointer, int Next)> open, string member, int line)
    {
        if (!open.TryPeek(out var around))
        {
            return "";
        }

        if (around.Next < 0)
        {
            return member;
        }

        open.Pop();
        open.Push((around.Pointer, around.Next + 1));
        var pointer = string.Create(CultureInfo.InvariantCulture, $"{around.Pointer}/{around.Next}");
        lines[pointer] = line;
        return pointer;
    }
}
