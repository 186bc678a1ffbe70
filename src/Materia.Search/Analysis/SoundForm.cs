using System.Text;

namespace Materia.Search.Analysis;

/// <summary>
/// Spells words as they sound, so that those who know a name by ear find it: <c>karitay</c> and <c>caritee</c> come close to
/// <c>karité</c>. Letters that one of the catalogue's languages says alike become one (c and k, ph and f, z and s, soft g, j and
/// h), silent ones fall away, and vowels are told apart no further than a, e or i, o or u.
/// </summary>
/// <remarks>
/// Keys such as Metaphone drop every vowel, which leaves one letter of <c>shea</c>, and know English only. Here the vowels stay for
/// comparing, and only <see cref="Skeleton"/> goes without them.
/// </remarks>
internal static class SoundForm
{
    private const string FrontVowels = "eiy";

    /// <summary>
    /// The ways in which a folded word may be said: one, or two where it holds <c>ch</c>, which is said as in <c>chia</c> or as in
    /// <c>chamomile</c>. Letters other than a to z stand for themselves.
    /// </summary>
    public static IReadOnlyList<string> Of(string word) =>
        word.Contains("ch", StringComparison.Ordinal) ? [Say(word, 'x'), Say(word, 'k')] : [Say(word, 'x')];

    /// <summary>
    /// A sound form's consonants, alike ones as one, and whether it begins with a vowel or a breath. Words are compared only with
    /// those of the same skeleton.
    /// </summary>
    public static string Skeleton(string sound)
    {
        var skeleton = new StringBuilder(sound.Length);
        for (var i = 0; i < sound.Length; i++)
        {
            var letter = sound[i] switch
            {
                'a' or 'i' or 'u' or 'h' when i == 0 => 'a',
                'a' or 'i' or 'u' => '\0',
                'b' or 'w' => 'v',
                'x' => 's',
                var other => other,
            };
            if (letter != '\0' && (skeleton.Length == 0 || skeleton[^1] != letter))
            {
                skeleton.Append(letter);
            }
        }

        return skeleton.ToString();
    }

    private static string Say(string word, char ch)
    {
        var sound = new StringBuilder(word.Length + 4);
        for (var i = 0; i < word.Length; i++)
        {
            var next = i + 1 < word.Length ? word[i + 1] : '\0';
            var after = i + 2 < word.Length ? word[i + 2] : '\0';
            var breathed = i == 0 || (IsVowel(word[i - 1]) && IsVowel(next));
            var (said, taken) = word[i] == 'h' ? (breathed ? "h" : "", 1) : Said(word[i], next, after, i == 0, ch);
            foreach (var letter in said)
            {
                if (sound.Length == 0 || sound[^1] != letter)
                {
                    sound.Append(letter);
                }
            }

            i += taken - 1;
        }

        return sound.ToString();
    }

    /// <summary>What is said for the letter at a place, and how many letters that takes up.</summary>
    private static (string Said, int Taken) Said(char letter, char next, char after, bool first, char ch) => (letter, next) switch
    {
        ('a', _) => ("a", 1),
        ('e' or 'i', _) => ("i", 1),
        ('o' or 'u', _) => ("u", 1),
        ('y', _) => (first && IsVowel(next) ? "h" : "i", 1),
        ('s', 'c') when after == 'h' => ("x", 3),
        ('t', 'c') when after == 'h' => ("x", 3),
        ('s', 'h') => ("x", 2),
        ('s', 'c') when IsFront(after) => ("s", 2),
        ('c', 'h') => (ch == 'x' ? "x" : "k", 2),
        ('c', 'k') => ("k", 2),
        ('c', _) => (IsFront(next) ? "s" : "k", 1),
        ('q', _) => ("k", 1),
        ('k', 'w') => ("ku", 2),
        ('x', _) => (first ? "s" : "ks", 1),
        ('z', _) => ("s", 1),
        ('p', 'h') => ("f", 2),
        ('p', 's' or 't' or 'n') when first => ("", 1),
        ('k' or 'g', 'n') when first => ("", 1),
        ('w', 'r') when first => ("", 1),
        ('g', _) => (IsFront(next) ? "h" : "g", 1),
        ('j', _) => ("h", 1),
        _ => (letter.ToString(), 1),
    };

    private static bool IsFront(char letter) => FrontVowels.Contains(letter, StringComparison.Ordinal);

    private static bool IsVowel(char letter) => letter is 'a' or 'e' or 'i' or 'o' or 'u';
}
