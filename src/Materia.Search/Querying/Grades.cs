using Materia.Search.Indexing;

namespace Materia.Search.Querying;

/// <summary>How well each name fits a text, by document number, see <see cref="Grade"/>.</summary>
/// <param name="Whole">For the whole text.</param>
/// <param name="Words">For each of its words.</param>
internal sealed record Grades(byte[] Whole, byte[][] Words)
{
    /// <summary>True when some name fits the word at a place.</summary>
    public bool Holds(int word) => Words[word].AsSpan().ContainsAnyExcept(Grade.None);
}
