using System.Buffers.Binary;
using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Materia.Catalogue;

namespace Materia.Search.Cursors;

/// <summary>
/// Writes and reads the place after which a page starts: the release's number, a fingerprint of the request and the id of the last
/// hit, with a seal over all three and the release's checksum. The seal holds no secret; it catches a cursor that was cut, altered
/// or made up, and what it can't catch is only a place in a list that anybody may read.
/// </summary>
internal static class PageCursor
{
    private const int FingerprintAt = sizeof(int);
    private const int SealAt = FingerprintAt + RequestFingerprint.Length;
    private const int IdAt = SealAt + SealLength;
    private const int SealLength = 8;
    private const int LongestText = 1024;
    private const string StartAgain = "leave it out to start from the first page";

    /// <summary>The cursor of the page after the hit with id <paramref name="lastId"/>, in base64url.</summary>
    public static string Write(Release release, ReadOnlySpan<byte> fingerprint, string lastId)
    {
        var bytes = new byte[IdAt + Encoding.UTF8.GetByteCount(lastId)];
        BinaryPrimitives.WriteInt32BigEndian(bytes, release.Number);
        fingerprint.CopyTo(bytes.AsSpan(FingerprintAt));
        Encoding.UTF8.GetBytes(lastId, bytes.AsSpan(IdAt));
        Seal(release, bytes).CopyTo(bytes.AsSpan(SealAt));
        return Base64Url.EncodeToString(bytes);
    }

    /// <summary>Reads a cursor; gives the fault when it isn't one, or belongs to another release or another request.</summary>
    public static SearchFault? Read(string cursor, Release release, ReadOnlySpan<byte> fingerprint, out string lastId)
    {
        lastId = "";
        if (Decode(cursor) is not { } bytes)
        {
            return Fault($"This is not a cursor that a page of results gave; use `next` of the page before unchanged, or {StartAgain}.");
        }

        if (BinaryPrimitives.ReadInt32BigEndian(bytes) != release.Number)
        {
            return Fault($"This cursor belongs to another release of the catalogue, and release {release.Number} is served now; {StartAgain}.");
        }

        if (!Seal(release, bytes).SequenceEqual(bytes.AsSpan(SealAt, SealLength)))
        {
            return Fault($"This cursor was altered; use `next` of the page before unchanged, or {StartAgain}.");
        }

        if (!fingerprint.SequenceEqual(bytes.AsSpan(FingerprintAt, RequestFingerprint.Length)))
        {
            return Fault($"This cursor belongs to another search; repeat the search that gave it, or {StartAgain}.");
        }

        lastId = Encoding.UTF8.GetString(bytes.AsSpan(IdAt));
        return null;
    }

    private static byte[]? Decode(string cursor)
    {
        if (cursor.Length > LongestText || !Base64Url.IsValid(cursor, out var length) || length <= IdAt)
        {
            return null;
        }

        // Several texts can decode to the same bytes; only the one that was given out counts.
        var bytes = Base64Url.DecodeFromChars(cursor);
        return Base64Url.EncodeToString(bytes) == cursor ? bytes : null;
    }

    private static ReadOnlySpan<byte> Seal(Release release, byte[] bytes)
    {
        byte[] sealedBytes = [.. bytes.AsSpan(0, SealAt), .. bytes.AsSpan(IdAt), .. Encoding.UTF8.GetBytes(release.Checksum)];
        return SHA256.HashData(sealedBytes).AsSpan(0, SealLength);
    }

    private static SearchFault Fault(string message) => new("after", message);
}
