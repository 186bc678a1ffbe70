using System.Net;
using System.Text.Json.Nodes;

namespace Materia.Api.Tests.Hosting;

/// <summary>Reads answers, and checks what holds of every one of a sort.</summary>
internal static class Answers
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    /// <summary>Gets a JSON answer that must be 200.</summary>
    public static async Task<JsonObject> GetJsonAsync(this HttpClient client, string url)
    {
        using var answer = await client.GetAsync(url, Cancellation);
        var text = await answer.Content.ReadAsStringAsync(Cancellation);
        answer.StatusCode.ShouldBe(HttpStatusCode.OK, text);
        answer.Content.Headers.ContentType!.MediaType.ShouldBe("application/json");
        return JsonNode.Parse(text)!.AsObject();
    }

    /// <summary>Sends a GET with headers.</summary>
    public static Task<HttpResponseMessage> SendAsync(this HttpClient client, HttpMethod method, string url, params (string Name, string Value)[] headers)
    {
        var request = new HttpRequestMessage(method, url);
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value).ShouldBeTrue();
        }

        return client.SendAsync(request, Cancellation);
    }

    /// <summary>Checks that an answer is a whole RFC 9457 problem of this status and gives it.</summary>
    public static async Task<JsonObject> ShouldBeProblemAsync(this HttpResponseMessage answer, HttpStatusCode status)
    {
        var text = await answer.Content.ReadAsStringAsync(Cancellation);
        answer.StatusCode.ShouldBe(status, text);
        answer.Content.Headers.ContentType!.MediaType.ShouldBe("application/problem+json");
        answer.Headers.CacheControl!.NoStore.ShouldBeTrue();
        var problem = JsonNode.Parse(text)!.AsObject();
        problem["status"]!.GetValue<int>().ShouldBe((int)status);
        problem["type"]!.GetValue<string>().ShouldStartWith("/problems/");
        problem["title"]!.GetValue<string>().ShouldNotBeNullOrWhiteSpace();
        problem["detail"]!.GetValue<string>().ShouldNotBeNullOrWhiteSpace();
        problem["instance"]!.GetValue<string>().ShouldBe(answer.RequestMessage!.RequestUri!.PathAndQuery);
        problem["traceId"]!.GetValue<string>().ShouldNotBeNullOrWhiteSpace();
        text.ShouldNotContain("   at ");
        text.ShouldNotContain("Exception");
        return problem;
    }

    /// <summary>The strings of a JSON list.</summary>
    public static IEnumerable<string> Texts(this JsonNode? list) => list!.AsArray().Select(t => t!.GetValue<string>());
}
