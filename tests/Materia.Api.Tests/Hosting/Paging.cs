using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Materia.Api.Tests.Hosting;

/// <summary>Follows a list from page to page.</summary>
internal static partial class Paging
{
    private const int MostPages = 1000;

    /// <summary>The ids of all items, in the order of the pages; follows the Link header only.</summary>
    public static async Task<IReadOnlyList<string>> AllIdsAsync(HttpClient client, string url)
    {
        var ids = new List<string>();
        for (var pages = 0; pages < MostPages; pages++)
        {
            using var answer = await client.GetAsync(url, TestContext.Current.CancellationToken);
            var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            answer.StatusCode.ShouldBe(HttpStatusCode.OK, text);
            var page = JsonNode.Parse(text)!;
            ids.AddRange(page["items"]!.AsArray().Select(i => i!["id"]!.GetValue<string>()));
            if (!answer.Headers.TryGetValues("Link", out var link))
            {
                page["next"].ShouldBeNull();
                return ids;
            }

            page["next"]!.GetValue<string>().ShouldNotBeNullOrEmpty();
            url = NextTarget().Match(link.Single()).Groups[1].Value;
            url.ShouldStartWith("/v1/");
        }

        throw new InvalidOperationException($"No end after {MostPages} pages.");
    }

    [GeneratedRegex("^<([^>]+)>; rel=\"next\"$")]
    private static partial Regex NextTarget();
}
