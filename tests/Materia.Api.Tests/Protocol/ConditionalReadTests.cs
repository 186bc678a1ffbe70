using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Protocol;

/// <summary>Entity tags, 304 and lifetimes (RFC 9110 sections 8.8 and 13, RFC 9111).</summary>
public abstract class ConditionalReadTests(ServedApi api)
{
    private const string Url = "/v1/ingredients/shea-butter";

    [Theory]
    [InlineData(Url)]
    [InlineData("/v1/ingredients?text=oil&limit=50")]
    [InlineData("/v1/suggestions?text=shea")]
    [InlineData("/v1/fatty-acids")]
    [InlineData("/v1/sources")]
    [InlineData("/v1/sources/recalled")]
    [InlineData("/v1/methods")]
    [InlineData("/v1/uses")]
    [InlineData("/v1/release")]
    public async Task Get_WithTheTagGivenBefore_Is304WithoutBody(string url)
    {
        using var first = await api.Client.SendAsync(HttpMethod.Get, url);
        var tag = first.Headers.ETag!;
        tag.IsWeak.ShouldBeFalse();
        first.Headers.CacheControl!.Public.ShouldBeTrue();
        first.Headers.CacheControl.MaxAge.ShouldBe(TimeSpan.FromSeconds(300));

        using var second = await api.Client.SendAsync(HttpMethod.Get, url, ("If-None-Match", tag.ToString()));

        second.StatusCode.ShouldBe(HttpStatusCode.NotModified);
        second.Headers.ETag.ShouldBe(tag);
        second.Headers.CacheControl!.MaxAge.ShouldBe(TimeSpan.FromSeconds(300));
        second.Headers.Vary.ShouldBe(first.Headers.Vary);
        second.Headers.GetValues("Materia-Release").ShouldBe(["1"]);
        (await second.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("\"something-else\"")]
    [InlineData("\"\"")]
    [InlineData("not even a tag")]
    public async Task Get_WithAnotherTag_Is200(string tag)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, Url, ("If-None-Match", tag));

        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
    }

    [Fact]
    public async Task Get_TagInAListOrWeakOrStar_Is304()
    {
        using var first = await api.Client.SendAsync(HttpMethod.Get, Url);
        var tag = first.Headers.ETag!.Tag;

        foreach (var header in new[] { $"\"a\", {tag}, \"b\"", "W/" + tag, "*" })
        {
            using var answer = await api.Client.SendAsync(HttpMethod.Get, Url, ("If-None-Match", header));
            answer.StatusCode.ShouldBe(HttpStatusCode.NotModified, header);
        }
    }

    [Fact]
    public async Task Get_StarForSomethingThatIsNotThere_Is404()
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, "/v1/ingredients/no-such-thing", ("If-None-Match", "*"));

        await answer.ShouldBeProblemAsync(HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task Get_EachCodingAndUrl_HasATagOfItsOwn()
    {
        var tags = new List<string>();
        foreach (var (url, coding) in new[] { (Url, "identity"), (Url, "gzip"), (Url, "br"), ("/v1/ingredients/kaolin", "identity"), ("/v1/ingredients?text=oil", "identity"), ("/v1/ingredients?text=oi", "identity") })
        {
            using var answer = await api.Client.SendAsync(HttpMethod.Get, url, ("Accept-Encoding", coding));
            answer.StatusCode.ShouldBe(HttpStatusCode.OK);
            tags.Add(answer.Headers.ETag!.Tag);
        }

        tags.ShouldBeUnique();
    }

    [Theory]
    [InlineData(Url)]
    [InlineData("/v1/ingredients?limit=1")]
    [InlineData("/v1/release")]
    public async Task Head_AnyRead_HasTheHeadersOfGetAndNoBody(string url)
    {
        using var get = await api.Client.SendAsync(HttpMethod.Get, url);
        using var head = await api.Client.SendAsync(HttpMethod.Head, url);

        head.StatusCode.ShouldBe(HttpStatusCode.OK);
        head.Headers.ETag.ShouldBe(get.Headers.ETag);
        head.Content.Headers.ContentType.ShouldBe(get.Content.Headers.ContentType);
        head.Content.Headers.ContentLength.ShouldBe(get.Content.Headers.ContentLength);
        (await head.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).ShouldBeEmpty();
    }

    [Fact]
    public async Task Head_UnknownAddress_Is404WithoutBody()
    {
        using var head = await api.Client.SendAsync(HttpMethod.Head, "/v1/nothing");

        head.StatusCode.ShouldBe(HttpStatusCode.NotFound);
        (await head.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).ShouldBeEmpty();
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteConditionalReadTests(SqliteApi api) : ConditionalReadTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlConditionalReadTests(PostgreSqlApi api) : ConditionalReadTests(api);
