namespace Materia.Search.Indexing;

/// <summary>How well a typed word fits a word of a name; the smaller the better, zero being no fit at all.</summary>
internal static class Grade
{
    /// <summary>No fit.</summary>
    public const byte None = 0;

    /// <summary>The same word.</summary>
    public const byte Exact = 1;

    /// <summary>The name's word begins with the typed one.</summary>
    public const byte Prefix = 2;

    /// <summary>One typing error apart; each further error is one more.</summary>
    public const byte OneEdit = 3;

    /// <summary>Sounds the same, or differs in the first letter only; each further letter of the sound that differs is one more.</summary>
    public const byte Sound = 5;

    /// <summary>Keeps the better of the grade that is there and <paramref name="grade"/>.</summary>
    public static void Improve(ref byte present, byte grade)
    {
        if (present == None || grade < present)
        {
            present = grade;
        }
    }
}
