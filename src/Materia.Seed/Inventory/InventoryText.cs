using System.Text;
using System.Text.Unicode;

namespace Materia.Seed.Inventory;

/// <summary>Opens an inventory file in whatever encoding it was saved.</summary>
internal static class InventoryText
{
    private const int BlockLength = 1 << 16;

    /// <summary>
    /// The encoding of a file: UTF-8, UTF-16 or UTF-32 by its mark, UTF-8 where the whole of it is valid, else Windows-1252, in which
    /// spreadsheets of western Europe save. The file is read once, in blocks.
    /// </summary>
    public static Encoding EncodingOf(string path)
    {
        using var stream = File.OpenRead(path);
        var block = new byte[BlockLength];
        var start = stream.ReadAtLeast(block.AsSpan(0, 4), 4, throwOnEndOfStream: false);
        if (block.AsSpan(0, start) is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] or [0xEF, 0xBB, 0xBF, ..])
        {
            // The reader follows the mark itself.
            return Encoding.UTF8;
        }

        stream.Position = 0;
        var held = 0;
        for (int read; (read = stream.Read(block, held, block.Length - held)) > 0;)
        {
            var length = held + read;
            var whole = length - Unfinished(block.AsSpan(0, length));
            if (!Utf8.IsValid(block.AsSpan(0, whole)))
            {
                return CodePagesEncodingProvider.Instance.GetEncoding(1252)!;
            }

            held = length - whole;
            block.AsSpan(whole, held).CopyTo(block);
        }

        return held == 0 ? Encoding.UTF8 : CodePagesEncodingProvider.Instance.GetEncoding(1252)!;
    }

    /// <summary>How many bytes at the end begin a character whose rest is in the next block.</summary>
    private static int Unfinished(ReadOnlySpan<byte> block)
    {
        for (var back = 1; back <= Math.Min(3, block.Length); back++)
        {
            var lead = block[^back];
            if ((lead & 0xC0) != 0x80)
            {
                var length = lead switch { >= 0xF0 => 4, >= 0xE0 => 3, >= 0xC0 => 2, _ => 1 };
                return length > back ? back : 0;
            }
        }

        return 0;
    }
}
