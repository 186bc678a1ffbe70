using System.Globalization;

namespace Materia.Api.Http;

/// <summary>Reads query parameters; what cannot be read is noted in <paramref name="faults"/> under <c>?name</c>.</summary>
/// <param name="query">The query string.</param>
/// <param name="faults">Where faults are noted.</param>
public sealed class QueryReader(IQueryCollection query, RequestFaults faults)
{
    /// <summary>The text of a parameter, trimmed; <see langword="null"/> when it is absent or empty.</summary>
    /// <param name="name">The parameter.</param>
    /// <param name="longest">The most characters that it may have.</param>
    public string? Text(string name, int longest = 200)
    {
        var values = query[name];
        if (values.Count > 1)
        {
            faults.Add("?" + name, $"{name} stands {values.Count} times; give it once.");
            return null;
        }

        var text = values.ToString().Trim();
        if (text.Length > longest)
        {
            faults.Add("?" + name, string.Create(CultureInfo.InvariantCulture, $"{name} has {text.Length} characters; {longest} at most."));
            return null;
        }

        return text.Length == 0 ? null : text;
    }

    /// <summary>All values of a parameter that may stand several times; each may also hold several, parted by commas.</summary>
    public IReadOnlyList<string> All(string name) =>
        [.. query[name].SelectMany(value => (value ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))];

    /// <summary>A whole number within bounds.</summary>
    public int Whole(string name, int least, int greatest, int otherwise)
    {
        if (Text(name) is not { } text)
        {
            return otherwise;
        }

        if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= least && number <= greatest)
        {
            return number;
        }

        faults.Add("?" + name, string.Create(CultureInfo.InvariantCulture, $"{name} must be a whole number from {least} to {greatest}; without it, it is {otherwise}."));
        return otherwise;
    }

    /// <summary>True or false; false when absent.</summary>
    public bool Flag(string name)
    {
        var text = Text(name);
        if (text is not (null or "true" or "false"))
        {
            faults.Add("?" + name, $"{name} must be true or false.");
        }

        return text == "true";
    }

    /// <summary>A day written as <c>2026-08-01</c>; <see langword="null"/> when absent.</summary>
    public DateOnly? Day(string name)
    {
        if (Text(name) is not { } text)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        faults.Add("?" + name, $"{name} must be a day of the calendar, written as 2026-08-01.");
        return null;
    }

    /// <summary>The value, one of <paramref name="words"/>; <see langword="null"/> where it is left out or, with a fault, none of them.</summary>
    public string? OneOf(string name, IReadOnlyList<string> words)
    {
        if (Text(name) is not { } word)
        {
            return null;
        }

        if (words.Contains(word, StringComparer.Ordinal))
        {
            return word;
        }

        var nearest = NearestWord.Of(word, words) is { } known ? $" Did you mean {known}?" : string.Empty;
        faults.Add("?" + name, $"There is no {name} '{(word.Length <= 40 ? word : word[..40] + "...")}'.{nearest} It is one of {string.Join(", ", words)}.");
        return null;
    }

    /// <summary>The values of a parameter whose values are a closed list of words.</summary>
    /// <typeparam name="T">The words' enumeration.</typeparam>
    public IReadOnlyList<T> Words<T>(string name)
        where T : struct, Enum
    {
        var words = new List<T>();
        foreach (var text in All(name))
        {
            if (Catalogue.KebabCase<T>.TryParse(text, out var word))
            {
                words.Add(word);
                continue;
            }

            var known = Catalogue.KebabCase<T>.Words;
            var advice = NearestWord.Of(text, known) is { } nearest ? $"did you mean {nearest}? It" : "it";
            faults.Add("?" + name, $"There is no {name} '{text}'; {advice} is one of {string.Join(", ", known)}.");
        }

        return words;
    }

    /// <summary>The value of a parameter that takes one of a closed list of words; the first of the enumeration when it is absent.</summary>
    /// <typeparam name="T">The words' enumeration.</typeparam>
    public T Word<T>(string name)
        where T : struct, Enum
    {
        var words = Words<T>(name);
        if (words.Count > 1)
        {
            faults.Add("?" + name, $"{name} takes one word; keep one.");
        }

        return words.Count == 0 ? default : words[0];
    }
}
