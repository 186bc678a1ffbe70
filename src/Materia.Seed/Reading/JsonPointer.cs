namespace Materia.Seed.Reading;

/// <summary>JSON Pointers as RFC 6901 writes them.</summary>
internal static class JsonPointer
{
    /// <summary><paramref name="pointer"/> with the member <paramref name="name"/> added, its <c>~</c> and <c>/</c> escaped.</summary>
    public static string Append(string pointer, string name) =>
        name.AsSpan().ContainsAny('~', '/')
            ? $"{pointer}/{name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}"
            : $"{pointer}/{name}";

    /// <summary>The pointer of the part around <paramref name="pointer"/>; the whole document for a first-level part.</summary>
    public static string Parent(string pointer) => pointer[..Math.Max(0, pointer.LastIndexOf('/'))];
}
