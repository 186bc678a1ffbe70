using System.Net;
using System.Net.Http.Headers;
using System.Text;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Protocol;

/// <summary>Bodies that are too large are refused with an answer that the sender can read, whether the length was announced or not.</summary>
public abstract class BodyLimitTests(ServedApi api)
{
    private const int Limit = 1_048_576;

    [Theory]
    [InlineData(Limit + 1, false)]
    [InlineData(Limit + 1, true)]
    [InlineData(20_000_000, false)]
    [InlineData(20_000_000, true)]
    public async Task Post_LargerThanTheLimit_Is413(int size, bool chunked)
    {
        using var answer = await PostAsync(size, chunked);

        (await answer.ShouldBeProblemAsync(HttpStatusCode.RequestEntityTooLarge))["type"]!.GetValue<string>().ShouldBe("/problems/too-large");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Post_OfTheLimitsOwnSize_IsRead(bool chunked)
    {
        using var answer = await PostAsync(Limit, chunked);

        // Spaces alone are no JSON: the body was read to its end and refused for what it holds.
        await answer.ShouldBeProblemAsync(HttpStatusCode.BadRequest);
    }

    private async Task<HttpResponseMessage> PostAsync(int size, bool chunked)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/evaluations");
        request.Content = new ByteArrayContent(Encoding.ASCII.GetBytes(new string(' ', size)));
        request.Content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        request.Headers.TransferEncodingChunked = chunked;
        return await api.Client.SendAsync(request, TestContext.Current.CancellationToken);
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteBodyLimitTests(SqliteApi api) : BodyLimitTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlBodyLimitTests(PostgreSqlApi api) : BodyLimitTests(api);
