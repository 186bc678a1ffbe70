using System.Globalization;
using System.Net;
using Materia.Api.Tests.Databases;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Protocol;

/// <summary>The limit on POSTs. It is counted before anything else is asked of a request, so no database matters here and one engine is enough.</summary>
public sealed class PostLimitTests(SqliteFile database) : IClassFixture<SqliteFile>
{
    [Fact]
    public async Task Post_MoreThanTheMinuteAllows_Is429WithRetryAfterWhileReadsGoOn()
    {
        await using var application = new MateriaApplication(database.Settings, ("Materia:RateLimit:PostsPerMinute", "3"));
        using var client = MateriaApplication.Client(application.Start());
        await ServedApi.WaitUntilReadyAsync(client);

        for (var i = 0; i < 3; i++)
        {
            using var allowed = await client.SendAsync(HttpMethod.Post, "/v1/release");
            allowed.StatusCode.ShouldBe(HttpStatusCode.MethodNotAllowed);
        }

        using var refused = await client.SendAsync(HttpMethod.Post, "/v1/release");

        await refused.ShouldBeProblemAsync(HttpStatusCode.TooManyRequests);
        int.Parse(refused.Headers.GetValues("Retry-After").Single(), CultureInfo.InvariantCulture).ShouldBeInRange(1, 60);
        (await client.GetJsonAsync("/v1/release"))["number"]!.GetValue<int>().ShouldBe(1);
    }
}
