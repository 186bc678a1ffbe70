using System.Text.Json;

namespace Materia.Seed.Reading;

/// <summary>Turns the serializer's first refusal of a file into all faults of that file.</summary>
internal static class JsonFaults
{
    /// <summary>
    /// Adds what is wrong with <paramref name="file"/>: one fault when the text is no JSON; otherwise every member that does
    /// not fit <paramref name="type"/>, and <paramref name="refusal"/> itself when the comparison finds none.
    /// </summary>
    public static void Explain(JsonFile file, Type type, JsonException refusal, FaultList faults)
    {
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(file.Memory);
        }
        catch (JsonException syntax)
        {
            faults.Add(file.Path, Line(syntax), $"not valid JSON: {Plain(syntax)} Look at this line and the end of the one before");
            return;
        }

        using (document)
        {
            var found = ShapeComparison.Compare(document.RootElement, type, new Place(file, ""), faults);
            if (found == 0)
            {
                faults.Add(file.Path, Line(refusal), $"{Plain(refusal)} Correct the value at {refusal.Path}");
            }
        }
    }

    private static int Line(JsonException exception) => (int)(exception.LineNumber ?? 0) + 1;

    /// <summary>The message without the path and line that the serializer appends; the fault has its own.</summary>
    private static string Plain(JsonException exception)
    {
        var end = exception.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        var path = exception.Message.IndexOf(" Path:", StringComparison.Ordinal);
        end = path >= 0 && (end < 0 || path < end) ? path : end;
        return end < 0 ? exception.Message : exception.Message[..end];
    }
}
