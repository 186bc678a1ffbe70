namespace Materia.Api.Http;

/// <summary>Finds the word that somebody most likely meant.</summary>
public static class NearestWord
{
    /// <summary>
    /// The word of <paramref name="words"/> that <paramref name="typed"/> begins, else the one with the least edit distance
    /// (Levenshtein) from it, or <see langword="null"/> when even that one differs in more than half of its letters.
    /// </summary>
    public static string? Of(string typed, IEnumerable<string> words)
    {
        // Longer input is no slip of the finger, and measuring it would cost time for nothing.
        if (typed.Length is 0 or > 40)
        {
            return null;
        }

        var nearest = words
            .Select(word => (
                Word: word,
                Begins: word.StartsWith(typed, StringComparison.OrdinalIgnoreCase),
                Distance: Distance(typed.ToLowerInvariant(), word.ToLowerInvariant())))
            .OrderByDescending(candidate => candidate.Begins)
            .ThenBy(candidate => candidate.Distance)
            .FirstOrDefault();
        return nearest.Word is { } found && (nearest.Begins || nearest.Distance <= Math.Max(1, found.Length / 2)) ? found : null;
    }

    private static int Distance(string a, string b)
    {
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var substituted = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(substituted, Math.Min(row[j - 1], row[j]) + 1);
            }
        }

        return row[b.Length];
    }
}
