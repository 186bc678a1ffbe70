namespace Materia.Search.Analysis;

/// <summary>Counts typing errors between two words.</summary>
internal static class EditDistance
{
    // Longer words are compared too, with rows on the heap.
    private const int LongestOnStack = 128;

    /// <summary>
    /// The least number of insertions, deletions, replacements and swaps of neighbours that turn one word into the other, no
    /// letter being touched twice (optimal string alignment, after Damerau 1964).
    /// </summary>
    public static int Between(ReadOnlySpan<char> a, ReadOnlySpan<char> b) => Between(a, b, int.MaxValue);

    /// <summary>The same, or a number above <paramref name="most"/> as soon as it is clear that there are more errors than that.</summary>
    public static int Between(ReadOnlySpan<char> a, ReadOnlySpan<char> b, int most)
    {
        var length = b.Length + 1;
        Span<int> rows = length <= LongestOnStack ? stackalloc int[3 * length] : new int[3 * length];
        var before = rows[..length];
        var last = rows.Slice(length, length);
        var row = rows[(2 * length)..];
        for (var j = 0; j < length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            var least = i;
            for (var j = 1; j < length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                var errors = Math.Min(Math.Min(row[j - 1] + 1, last[j] + 1), last[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    errors = Math.Min(errors, before[j - 2] + 1);
                }

                row[j] = errors;
                least = Math.Min(least, errors);
            }

            // A swap reaches back two rows and adds one error, so the count never falls below a row's least.
            if (least > most)
            {
                return least;
            }

            var free = before;
            before = last;
            last = row;
            row = free;
        }

        return last[b.Length];
    }

    /// <summary>How many errors are forgiven in a word: none below four letters, where they would turn it into another word; one below eight; else two.</summary>
    public static int Forgiven(int length) => length switch { < 4 => 0, < 8 => 1, _ => 2 };
}
