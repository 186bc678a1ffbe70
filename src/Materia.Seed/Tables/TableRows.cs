using Materia.Seed.Reading;

namespace Materia.Seed.Tables;

/// <summary>The rows of a table.</summary>
/// <typeparam name="T">The type of a row's record.</typeparam>
/// <param name="Rows">The rows that could be read.</param>
/// <param name="IsComplete">True when that is all of them.</param>
internal readonly record struct TableRows<T>(IReadOnlyList<Placed<T>> Rows, bool IsComplete);
