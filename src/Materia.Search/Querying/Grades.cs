namespace Materia.Search.Querying;

/// <summary>How well each name fits a text, by document number, see <see cref="Indexing.Grade"/>.</summary>
/// <param name="Whole">For the whole text.</param>
/// <param name="Words">For each of its words.</param>
internal sealed record Grades(byte[] Whole, byte[][] Words);
