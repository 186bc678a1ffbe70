using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Http;

/// <summary>Reads a JSON body; what cannot be read becomes a problem that points at the place.</summary>
public static partial class JsonBody
{
    /// <summary>Reads the body as <typeparamref name="T"/> with <see cref="ApiJson.Options"/>.</summary>
    /// <returns>The value, or the problem (400, 413 or 415) to answer with; exactly one is set.</returns>
    public static async Task<(T? Value, ProblemHttpResult? Problem)> ReadAsync<T>(HttpContext context)
        where T : class
    {
        if (!context.Request.HasJsonContentType())
        {
            return (null, Problems.Of(ProblemKinds.UnsupportedMediaType));
        }

        try
        {
            var value = await context.Request.ReadFromJsonAsync<T>(ApiJson.Options, context.RequestAborted);
            return value is null
                ? (null, Problems.InvalidRequest("", "The body is null; send a JSON object."))
                : (value, null);
        }
        catch (JsonException fault)
        {
            return (null, Problems.InvalidRequest(PointerOf(fault.Path), Message(fault)));
        }
        catch (BadHttpRequestException fault) when (fault.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            return (null, Problems.Of(ProblemKinds.TooLarge));
        }
    }

    /// <summary>Turns a path of the JSON reader (<c>$.lines[0].percent</c>) into a JSON Pointer (<c>/lines/0/percent</c>, RFC 6901).</summary>
    public static string PointerOf(string? path)
    {
        var pointer = new StringBuilder();
        foreach (Match step in PathSteps().Matches(path ?? ""))
        {
            var name = step.Groups.Values.Skip(1).First(g => g.Success).Value;
            pointer.Append('/').Append(name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
        }

        return pointer.ToString();
    }

    private static string Message(JsonException fault)
    {
        // The reader's own sentence names CLR types and repeats path and line; only what a caller can use is kept.
        var line = string.Create(CultureInfo.InvariantCulture, $"line {fault.LineNumber + 1}, byte {fault.BytePositionInLine + 1}");
        var unknown = UnknownMember().Match(fault.Message);
        var missing = MissingMembers().Match(fault.Message);
        return fault.Message switch
        {
            _ when unknown.Success => $"There is no member '{unknown.Groups[1].Value}' here ({line}); take it out or correct its name.",
            _ when missing.Success => $"Missing here ({line}): {missing.Groups[1].Value}; add it.",
            _ when fault.Message.Contains("uplicate", StringComparison.Ordinal) => $"A member stands here twice ({line}); keep one.",
            _ when fault.InnerException is JsonException => $"This is not JSON ({line}); check commas, quotes and brackets there. Numbers have a decimal point and no quotes.",
            _ => $"This is not of the form that the call expects ({line}); compare it with the example in the documentation at /docs.",
        };
    }

    [GeneratedRegex(@"\.([^.\[\]]+)|\[(\d+)\]|\['((?:[^'\\]|\\.)*)'\]")]
    private static partial Regex PathSteps();

    [GeneratedRegex(@"^The JSON property '([^']*)' could not be mapped")]
    private static partial Regex UnknownMember();

    [GeneratedRegex(@"was missing required properties[^:]*: (.*?)\.")]
    private static partial Regex MissingMembers();
}
