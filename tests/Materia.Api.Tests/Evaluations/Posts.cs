using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Evaluations;

/// <summary>Sends formulas.</summary>
internal static class Posts
{
    private const string Url = "/v1/evaluations";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    /// <summary>Posts a text as JSON.</summary>
    public static Task<HttpResponseMessage> PostAsync(this HttpClient client, string body, string query = "") =>
        client.PostAsync(Url + query, new StringContent(body, Encoding.UTF8, "application/json"), Cancellation);

    /// <summary>Posts bytes with a content type of their own.</summary>
    public static Task<HttpResponseMessage> PostAsync(this HttpClient client, byte[] body, string? contentType)
    {
        var content = new ByteArrayContent(body);
        if (contentType is not null)
        {
            content.Headers.TryAddWithoutValidation("Content-Type", contentType).ShouldBeTrue();
        }

        return client.PostAsync(Url, content, Cancellation);
    }

    /// <summary>Evaluates a formula that must be taken.</summary>
    public static async Task<JsonObject> EvaluateAsync(this HttpClient client, string body, string query = "")
    {
        using var answer = await client.PostAsync(body, query);
        var text = await answer.Content.ReadAsStringAsync(Cancellation);
        answer.StatusCode.ShouldBe(HttpStatusCode.OK, text);
        answer.Content.Headers.ContentType!.MediaType.ShouldBe("application/json");
        return JsonNode.Parse(text)!.AsObject();
    }

    /// <summary>Posts a text that must be refused, and gives the messages at <paramref name="place"/>.</summary>
    public static async Task<string> RefuseAsync(this HttpClient client, string body, HttpStatusCode status, string place, string query = "")
    {
        using var answer = await client.PostAsync(body, query);
        var problem = await answer.ShouldBeProblemAsync(status);
        var errors = problem["errors"].ShouldNotBeNull().AsObject();
        errors.Select(e => e.Key).ShouldContain(place);
        return string.Join(' ', errors[place].Texts());
    }
}
