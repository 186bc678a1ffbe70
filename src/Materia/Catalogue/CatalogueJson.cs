using System.Security.Cryptography;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Materia.Catalogue.Inventory;

namespace Materia.Catalogue;

/// <summary>The one JSON form of catalogue records: camelCase, strict, nothing written that is absent.</summary>
public static class CatalogueJson
{
    /// <summary>
    /// Options that refuse unknown, repeated and missing members and numbers in quotes, and leave out absent members and
    /// empty lists when writing. Shared, therefore read-only.
    /// </summary>
    public static JsonSerializerOptions Options { get; } = Create();

    /// <summary>SHA-256 over the content's JSON, in lower-case hexadecimal: equal content, equal checksum.</summary>
    public static string Checksum(CatalogueContent content) => Hash(content);

    /// <summary>SHA-256 over the JSON of an inventory's entries, in lower-case hexadecimal: equal entries, equal checksum.</summary>
    public static string InventoryChecksum(IReadOnlyList<InventoryEntry> entries) => Hash(entries);

    private static string Hash<T>(T content)
    {
        using var hash = new HashStream();
        JsonSerializer.Serialize(hash, content, Options);
        return hash.Hex();
    }

    private static JsonSerializerOptions Create()
    {
        var options = new JsonSerializerOptions(JsonSerializerOptions.Strict)
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingDefault,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            TypeInfoResolver = new CatalogueTypeInfoResolver(),
        };
        options.MakeReadOnly();
        return options;
    }

    private sealed class HashStream : Stream
    {
        private readonly IncrementalHash sha = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

        public override bool CanRead => false;

        public override bool CanSeek => false;

        public override bool CanWrite => true;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public string Hex() => Convert.ToHexStringLower(sha.GetHashAndReset());

        public override void Flush()
        {
        }

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => sha.AppendData(buffer, offset, count);

        public override void Write(ReadOnlySpan<byte> buffer) => sha.AppendData(buffer);

        protected override void Dispose(bool disposing)
        {
            sha.Dispose();
            base.Dispose(disposing);
        }
    }
}
