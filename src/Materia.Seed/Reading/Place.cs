using System.Globalization;

namespace Materia.Seed.Reading;

/// <summary>A part of a seed file, so that a fault can name its line.</summary>
/// <param name="File">The file.</param>
/// <param name="Pointer">The JSON Pointer (RFC 6901) of the part; in a table, <c>/</c> and the number of the row, from 0.</param>
internal readonly record struct Place(SeedFile File, string Pointer)
{
    /// <summary>The line, counted from 1.</summary>
    public int? Line => File.LineOf(Pointer);

    /// <summary>The member <paramref name="name"/> of this part.</summary>
    public Place Member(string name) => new(File, JsonPointer.Append(Pointer, name));

    /// <summary>The element <paramref name="index"/> of the list <paramref name="name"/>.</summary>
    public Place Item(string name, int index) =>
        new(File, string.Create(CultureInfo.InvariantCulture, $"{Pointer}/{name}/{index}"));

    /// <summary>The element <paramref name="index"/> of this list.</summary>
    public Place Element(int index) => new(File, string.Create(CultureInfo.InvariantCulture, $"{Pointer}/{index}"));
}

/// <summary>A value with the place it was read from.</summary>
/// <typeparam name="T">The type of the value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Place">The place.</param>
internal readonly record struct Placed<T>(T Value, Place Place);
