namespace Materia.Search.Analysis;

/// <summary>Counts typing errors between two words.</summary>
internal static class EditDistance
{
    /// <summary>
    /// The least number of insertions, deletions, replacements and swaps of neighbours that turn one word into the other, no
    /// letter being touched twice (optimal string alignment, after Damerau 1964).
    /// </summary>
    public static int Between(string a, string b)
    {
        var (before, last, row) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        for (var j = 0; j <= b.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(row[j - 1] + 1, last[j] + 1), last[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, last, row) = (last, row, before);
        }

        return last[b.Length];
    }

    /// <summary>How many errors are forgiven in a word: none below four letters, where they would turn it into another word; one below eight; else two.</summary>
    public static int Forgiven(int length) => length switch { < 4 => 0, < 8 => 1, _ => 2 };
}
