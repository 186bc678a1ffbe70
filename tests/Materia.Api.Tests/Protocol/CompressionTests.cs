using System.IO.Compression;
using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Protocol;

/// <summary>Content codings.</summary>
public abstract class CompressionTests(ServedApi api)
{
    [Theory]
    [InlineData("/v1/ingredients/shea-butter")]
    [InlineData("/v1/ingredients?limit=100")]
    [InlineData("/v1/sources")]
    [InlineData("/openapi/materia.v1.json")]
    public async Task Get_GzipOrBrotli_DecodesToTheSameBytesAndIsSmaller(string url)
    {
        var plain = await BytesAsync(url, "identity", expected: null);

        var gzip = await BytesAsync(url, "gzip", expected: "gzip");
        var brotli = await BytesAsync(url, "br", expected: "br");

        Decode(new GZipStream(new MemoryStream(gzip), CompressionMode.Decompress)).ShouldBe(plain);
        Decode(new BrotliStream(new MemoryStream(brotli), CompressionMode.Decompress)).ShouldBe(plain);
        gzip.Length.ShouldBeLessThan(plain.Length);
        brotli.Length.ShouldBeLessThan(plain.Length);
    }

    [Theory]
    [InlineData("gzip, deflate, br, zstd", "br")]
    [InlineData("gzip, deflate", "gzip")]
    [InlineData("br;q=0.5, gzip;q=0.9", "gzip")]
    [InlineData("br;q=0, gzip;q=0", null)]
    [InlineData("*", "br")]
    [InlineData("*;q=0", null)]
    [InlineData("identity", null)]
    [InlineData("zstd", null)]
    [InlineData(";;;=", null)]
    public async Task Get_AcceptEncoding_PicksTheBestThatTheCallerTakes(string accepted, string? coding)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, "/v1/ingredients/shea-butter", ("Accept-Encoding", accepted));

        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
        answer.Content.Headers.ContentEncoding.SingleOrDefault().ShouldBe(coding);
        answer.Headers.Vary.ShouldContain("Accept-Encoding");
    }

    private static byte[] Decode(Stream encoded)
    {
        using var decoded = new MemoryStream();
        using (encoded)
        {
            encoded.CopyTo(decoded);
        }

        return decoded.ToArray();
    }

    private async Task<byte[]> BytesAsync(string url, string accepted, string? expected)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, url, ("Accept-Encoding", accepted));
        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
        answer.Content.Headers.ContentEncoding.SingleOrDefault().ShouldBe(expected);
        return await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteCompressionTests(SqliteApi api) : CompressionTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlCompressionTests(PostgreSqlApi api) : CompressionTests(api);
