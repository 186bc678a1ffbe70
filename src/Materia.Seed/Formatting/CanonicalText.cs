using System.Text;
using System.Text.Json;
using Materia.Catalogue;

namespace Materia.Seed.Formatting;

/// <summary>
/// The one way to lay out a seed record: members in the record's order, one statement a line, so that a change of one figure
/// is a change of one line.
/// </summary>
public static class CanonicalText
{
    private const string Step = "  ";

    /// <summary>The canonical text of <paramref name="record"/>, UTF-8, lines ended by LF.</summary>
    /// <typeparam name="T">An ingredient or a source.</typeparam>
    public static byte[] Write<T>(T record)
    {
        var element = JsonSerializer.SerializeToElement(record, CatalogueJson.Options);
        var text = new StringBuilder();
        WriteOpen(element, "", text);
        return Encoding.UTF8.GetBytes(text.Append('\n').ToString());
    }

    /// <summary>An object that is spread over lines: the record itself, and one that holds a list of statements.</summary>
    private static void WriteOpen(JsonElement element, string indent, StringBuilder text)
    {
        text.Append("{\n");
        var separator = "";
        foreach (var member in element.EnumerateObject())
        {
            text.Append(separator).Append(indent).Append(Step);
            WriteName(member, text);
            if (IsListOfObjects(member.Value))
            {
                WriteList(member.Value, indent + Step, text);
            }
            else
            {
                WriteInline(member.Value, text);
            }

            separator = ",\n";
        }

        text.Append('\n').Append(indent).Append('}');
    }

    private static void WriteList(JsonElement list, string indent, StringBuilder text)
    {
        text.Append("[\n");
        var separator = "";
        foreach (var item in list.EnumerateArray())
        {
            text.Append(separator).Append(indent).Append(Step);
            if (item.EnumerateObject().Any(m => IsListOfObjects(m.Value)))
            {
                WriteOpen(item, indent + Step, text);
            }
            else
            {
                WriteInline(item, text);
            }

            separator = ",\n";
        }

        text.Append('\n').Append(indent).Append(']');
    }

    private static void WriteInline(JsonElement element, StringBuilder text)
    {
        var separator = " ";
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                text.Append('{');
                foreach (var member in element.EnumerateObject())
                {
                    text.Append(separator);
                    WriteName(member, text);
                    WriteInline(member.Value, text);
                    separator = ", ";
                }

                text.Append(" }");
                break;
            case JsonValueKind.Array:
                text.Append('[');
                foreach (var item in element.EnumerateArray())
                {
                    text.Append(separator);
                    WriteInline(item, text);
                    separator = ", ";
                }

                text.Append(" ]");
                break;
            default:
                text.Append(element.GetRawText());
                break;
        }
    }

    private static void WriteName(JsonProperty member, StringBuilder text) => text.Append('"').Append(member.Name).Append("\": ");

    private static bool IsListOfObjects(JsonElement element) =>
        element.ValueKind == JsonValueKind.Array && element.GetArrayLength() > 0 && element[0].ValueKind == JsonValueKind.Object;
}
