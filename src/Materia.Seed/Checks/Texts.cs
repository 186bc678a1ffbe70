using System.Text.Json;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>No text in a JSON file is empty, begins or ends with a blank, or holds a line break or another control character.</summary>
internal static class Texts
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var place in seed.Ingredients.Select(i => i.Place).Concat(seed.Sources.Select(s => s.Place)))
        {
            Check((JsonFile)place.File, faults);
        }
    }

    private static void Check(JsonFile file, FaultList faults)
    {
        var reader = new Utf8JsonReader(file.Text);
        while (reader.Read())
        {
            if (reader.TokenType != JsonTokenType.String || IsPlain(reader.ValueSpan))
            {
                continue;
            }

            var text = reader.GetString()!;
            var message = text switch
            {
                "" => "an empty text; leave the member out or fill it in",
                _ when char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1]) => $"\"{text}\" begins or ends with a blank; take the blank away",
                _ when text.Any(char.IsControl) => $"\"{text[..Math.Min(text.Length, 20)]}…\" holds a line break or a control character; write one line",
                _ => null,
            };
            if (message is not null)
            {
                var line = 1 + file.Text[..(int)reader.TokenStartIndex].Count((byte)'\n');
                faults.Add(file.Path, line, message);
            }
        }
    }

    /// <summary>True for the usual text, which needs no closer look: printable ASCII at both ends and no escape in it.</summary>
    private static bool IsPlain(ReadOnlySpan<byte> raw) =>
        raw is [> 0x20 and < 0x7F, .., > 0x20 and < 0x7F] && !raw.Contains((byte)'\\');
}
