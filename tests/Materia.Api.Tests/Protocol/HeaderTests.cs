using System.Net;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Protocol;

/// <summary>Headers that every answer has: the release, what browsers may do, and who may read.</summary>
public abstract class HeaderTests(ServedApi api)
{
    [Theory]
    [InlineData("GET", "/v1/ingredients/shea-butter")]
    [InlineData("GET", "/v1/ingredients?limit=0")]
    [InlineData("GET", "/v1/ingredients/no-such-thing")]
    [InlineData("GET", "/v1/nothing")]
    [InlineData("DELETE", "/v1/ingredients")]
    public async Task Any_UnderV1_NamesTheRelease(string method, string url)
    {
        using var answer = await api.Client.SendAsync(new HttpMethod(method), url);

        answer.Headers.GetValues("Materia-Release").ShouldBe(["1"]);
        var published = (await api.Client.GetJsonAsync("/v1/release"))["published"]!.GetValue<DateTimeOffset>();
        answer.Headers.GetValues("Materia-Release-Date").ShouldBe([published.UtcDateTime.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)]);
    }

    [Theory]
    [InlineData("/v1/ingredients/shea-butter")]
    [InlineData("/v1/nothing")]
    [InlineData("/health/live")]
    [InlineData("/docs/index.html")]
    [InlineData("/problems/not-found")]
    public async Task Any_HasTheSecurityHeadersAndHidesTheServer(string url)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, url);

        answer.Headers.GetValues("X-Content-Type-Options").ShouldBe(["nosniff"]);
        answer.Headers.GetValues("Referrer-Policy").ShouldBe(["no-referrer"]);
        var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        policy.ShouldContain("default-src 'none'");
        policy.ShouldContain("frame-ancestors 'none'");
        policy.ShouldNotContain("unsafe-eval");
        answer.Headers.Contains("Server").ShouldBeFalse();
    }

    [Fact]
    public async Task Get_FromAnotherOrigin_MayBeReadWithTheHeadersThatClientsNeed()
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, "/v1/ingredients/shea-butter", ("Origin", "https://lessons.example"));

        answer.Headers.GetValues("Access-Control-Allow-Origin").ShouldBe(["*"]);
        var exposed = string.Join(",", answer.Headers.GetValues("Access-Control-Expose-Headers"));
        foreach (var header in new[] { "ETag", "Link", "Location", "Retry-After", "Materia-Release", "Materia-Release-Date" })
        {
            exposed.Split(',').ShouldContain(header);
        }
    }

    [Fact]
    public async Task Preflight_OfARead_IsGranted()
    {
        using var answer = await api.Client.SendAsync(
            HttpMethod.Options, "/v1/ingredients/shea-butter",
            ("Origin", "https://lessons.example"), ("Access-Control-Request-Method", "GET"), ("Access-Control-Request-Headers", "if-none-match"));

        answer.StatusCode.ShouldBe(HttpStatusCode.NoContent);
        answer.Headers.GetValues("Access-Control-Allow-Origin").ShouldBe(["*"]);
        string.Join(",", answer.Headers.GetValues("Access-Control-Allow-Headers")).ToLowerInvariant().ShouldContain("if-none-match");
    }

    [Fact]
    public async Task Preflight_OfAPost_IsNotGranted()
    {
        using var answer = await api.Client.SendAsync(
            HttpMethod.Options, "/v1/evaluations",
            ("Origin", "https://lessons.example"), ("Access-Control-Request-Method", "POST"), ("Access-Control-Request-Headers", "content-type"));

        var methods = answer.Headers.TryGetValues("Access-Control-Allow-Methods", out var granted) ? string.Join(",", granted) : "";
        methods.ShouldNotContain("POST");
        var headers = answer.Headers.TryGetValues("Access-Control-Allow-Headers", out var allowed) ? string.Join(",", allowed) : "";
        headers.ToLowerInvariant().ShouldNotContain("content-type");
    }

    [Fact]
    public async Task Post_FromAnotherOrigin_IsNotShared()
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Post, "/v1/evaluations", ("Origin", "https://lessons.example"));

        answer.Headers.Contains("Access-Control-Allow-Origin").ShouldBeFalse();
    }
}

[Collection(nameof(SqliteApi))]
public sealed class SqliteHeaderTests(SqliteApi api) : HeaderTests(api);

[Collection(nameof(PostgreSqlApi))]
public sealed class PostgreSqlHeaderTests(PostgreSqlApi api) : HeaderTests(api);
