using System.Globalization;
using System.Text;
using System.Text.Json;
using Materia.Formulation;

namespace Materia.Api.Evaluations.Reading;

/// <summary>Reads through a text to see whether it is JSON at all, keeping track of the place.</summary>
internal sealed class JsonSyntax
{
    /// <summary>The deepest nesting that the reader takes; a formula needs eight.</summary>
    private const int Deepest = 64;

    private readonly List<Container> open = [];

    private JsonSyntax()
    {
    }

    /// <summary>The first place at which <paramref name="utf8"/> is not JSON or says a member twice; <see langword="null"/> when there is none.</summary>
    public static FormulaFault? FirstFault(ReadOnlySpan<byte> utf8)
    {
        if (!System.Text.Unicode.Utf8.IsValid(utf8))
        {
            return new FormulaFault(string.Empty, "The body is not UTF-8. Save or send it in UTF-8.");
        }

        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = Deepest });
        var syntax = new JsonSyntax();
        try
        {
            while (reader.Read())
            {
                if (!syntax.Take(ref reader))
                {
                    return new FormulaFault(syntax.Pointer(), "This member stands here twice. Keep one of them.");
                }
            }

            return null;
        }
        catch (JsonException) when (syntax.open.Count >= Deepest)
        {
            return new FormulaFault(string.Empty, $"Objects and lists are nested more than {Deepest} deep here; take the extra brackets out.");
        }
        catch (JsonException fault)
        {
            var (line, place) = (fault.LineNumber + 1 ?? 1, fault.BytePositionInLine + 1 ?? 1);
            return new FormulaFault(
                syntax.Pointer(), string.Create(CultureInfo.InvariantCulture, $"This is not JSON at line {line}, byte {place}. {JsonHint.For(utf8, line - 1, place - 1)}"));
        }
        catch (InvalidOperationException)
        {
            return new FormulaFault(syntax.Pointer(), "This text holds half of a \\u pair of escapes, which is no character. Write the character itself, or both halves.");
        }
    }

    /// <summary>Takes note of a token; <see langword="false"/> for a member that its object has already.</summary>
    private bool Take(ref Utf8JsonReader reader)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                Next();
                open.Add(new Container(new HashSet<string>(StringComparer.Ordinal)));
                break;
            case JsonTokenType.StartArray:
                Next();
                open.Add(new Container(null));
                break;
            case JsonTokenType.EndObject or JsonTokenType.EndArray:
                open.RemoveAt(open.Count - 1);
                break;
            case JsonTokenType.PropertyName:
                open[^1].Member = reader.GetString()!;
                return open[^1].Members!.Add(open[^1].Member!);
            case JsonTokenType.String:
                Next();

                // Reading the text shows escapes that stand for no character.
                _ = reader.GetString();
                break;
            default:
                Next();
                break;
        }

        return true;
    }

    private void Next()
    {
        if (open.Count > 0 && open[^1].Members is null)
        {
            open[^1].Index++;
        }
    }

    private string Pointer()
    {
        var pointer = new StringBuilder();
        foreach (var container in open)
        {
            if (container.Members is null && container.Index >= 0)
            {
                pointer.Append(CultureInfo.InvariantCulture, $"/{container.Index}");
            }
            else if (container.Member is { } member)
            {
                pointer.Append('/').Append(JsonPointer.Escape(member));
            }
        }

        return pointer.ToString();
    }

    private sealed class Container(HashSet<string>? members)
    {
        public HashSet<string>? Members { get; } = members;

        public string? Member { get; set; }

        public int Index { get; set; } = -1;
    }
}
