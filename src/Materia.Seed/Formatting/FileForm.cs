namespace Materia.Seed.Formatting;

/// <summary>A file's text beside its canonical form.</summary>
/// <param name="Path">The path relative to the seed directory.</param>
/// <param name="Text">The text as it stands.</param>
/// <param name="Canonical">The canonical text.</param>
internal sealed record FileForm(string Path, ReadOnlyMemory<byte> Text, byte[] Canonical)
{
    /// <summary>True when the two are the same, byte by byte.</summary>
    public bool IsCanonical => Text.Span.SequenceEqual(Canonical);

    /// <summary>The first line, counted from 1, that differs.</summary>
    public int FirstDifference()
    {
        var same = Text.Span.CommonPrefixLength(Canonical);
        return 1 + Text.Span[..same].Count((byte)'\n');
    }
}
