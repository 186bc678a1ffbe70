using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Documents;

/// <summary>The README's examples give the README's answers.</summary>
[Collection(nameof(SqliteApi))]
public sealed partial class ReadmeTests(SqliteApi api)
{
    [Fact]
    public async Task EveryExample_GivesTheAnswerShown()
    {
        var readme = await File.ReadAllTextAsync(Repository.File("README.md"), TestContext.Current.CancellationToken);
        var examples = Examples().Matches(readme);
        examples.Count.ShouldBe(3, "a search, a record and an evaluation");
        foreach (Match example in examples)
        {
            using var request = Request(example.Groups["command"].Value);
            using var answer = await api.Client.SendAsync(request, TestContext.Current.CancellationToken);
            var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            answer.StatusCode.ShouldBe(HttpStatusCode.OK, text);
            ShouldHold(JsonNode.Parse(text), JsonNode.Parse(example.Groups["answer"].Value), request.RequestUri!.ToString());
        }
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
