using System.Globalization;

namespace Materia.Api.Http;

/// <summary>
/// What is wrong with a request, gathered so that the caller learns of everything at once. Keys are JSON Pointers into the
/// body (<c>/lines/0/percent</c>; the empty text is the whole body) or query parameters (<c>?limit</c>).
/// </summary>
public sealed class RequestFaults
{
    private const int MostListed = 100;

    private readonly Dictionary<string, List<string>> errors = new(StringComparer.Ordinal);
    private int count;

    /// <summary>Whether anything is wrong.</summary>
    public bool Any => count > 0;

    /// <summary>Notes one fault.</summary>
    /// <param name="key">A JSON Pointer or <c>?name</c>.</param>
    /// <param name="message">What is wrong and what to send instead.</param>
    public void Add(string key, string message)
    {
        // A hostile body can be wrong in a million places; the first hundred tell enough.
        if (++count > MostListed)
        {
            return;
        }

        if (!errors.TryGetValue(key, out var messages))
        {
            errors.Add(key, messages = []);
        }

        messages.Add(message);
    }

    /// <summary>The faults by key, in the order in which the keys were first noted.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> ByKey() =>
        errors.ToDictionary(e => e.Key, e => (IReadOnlyList<string>)e.Value, StringComparer.Ordinal);

    /// <summary>One sentence for the problem's detail.</summary>
    public string Summary() => count switch
    {
        1 => errors.Values.First()[0],
        > MostListed => string.Create(CultureInfo.InvariantCulture, $"{count} things are wrong; errors lists the first {MostListed}."),
        _ => string.Create(CultureInfo.InvariantCulture, $"{count} things are wrong; errors lists them."),
    };
}
