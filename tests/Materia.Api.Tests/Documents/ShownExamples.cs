using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Materia.Api.Tests.Documents;

/// <summary>The examples of a document: a call of a shell and the answer shown below it.</summary>
internal static partial class ShownExamples
{
    /// <summary>Sends every call of a document, holds the answer to what is shown, and gives the number of calls.</summary>
    public static async Task<int> ShouldHoldAsync(string document, HttpClient client)
    {
        var cancel = TestContext.Current.CancellationToken;
        var examples = Examples().Matches(await File.ReadAllTextAsync(document, cancel));
        foreach (Match example in examples)
        {
            using var request = Request(example.Groups["command"].Value);
            using var answer = await client.SendAsync(request, cancel);
            var text = await answer.Content.ReadAsStringAsync(cancel);
            answer.StatusCode.ShouldBe(HttpStatusCode.OK, text);
            ShouldHold(JsonNode.Parse(text), JsonNode.Parse(example.Groups["answer"].Value), request.RequestUri!.ToString());
        }

        return examples.Count;
    }

    private static HttpRequestMessage Request(string command)
    {
        var url = Url().Match(command);
        url.Success.ShouldBeTrue(command);
        var body = Body().Match(command);
        return body.Success
            ? new(HttpMethod.Post, url.Groups[1].Value) { Content = new StringContent(body.Groups[1].Value, Encoding.UTF8, "application/json") }
            : new(HttpMethod.Get, url.Groups[1].Value);
    }

    /// <summary>Everything shown must be in the answer: members by name, list items in the same order with others between them.</summary>
    private static void ShouldHold(JsonNode? actual, JsonNode? shown, string at)
    {
        switch (shown)
        {
            case JsonObject members:
                foreach (var (name, value) in members)
                {
                    ShouldHold(actual.ShouldBeOfType<JsonObject>(at)[name], value, $"{at}/{name}");
                }

                break;
            case JsonArray items:
                var from = 0;
                var list = actual.ShouldBeOfType<JsonArray>(at);
                foreach (var item in items)
                {
                    var found = Enumerable.Range(from, list.Count - from).Cast<int?>().FirstOrDefault(i => Holds(list[i!.Value], item));
                    found.ShouldNotBeNull($"{at}: {item}");
                    from = found.Value + 1;
                }

                break;
            default:
                JsonNode.DeepEquals(actual, shown).ShouldBeTrue($"{at}: {actual} is shown as {shown}");
                break;
        }
    }

    private static bool Holds(JsonNode? actual, JsonNode? shown)
    {
        try
        {
            ShouldHold(actual, shown, "");
            return true;
        }
        catch (ShouldAssertException)
        {
            return false;
        }
    }

    [GeneratedRegex("```sh\n(?<command>.*?)```\\s*```json\n(?<answer>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Examples();

    [GeneratedRegex("'http://localhost:5000([^']*)'")]
    private static partial Regex Url();

    [GeneratedRegex("-d '(.*)'", RegexOptions.Singleline)]
    private static partial Regex Body();
}
