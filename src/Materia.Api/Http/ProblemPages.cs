using System.Globalization;
using System.Net;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Materia.Api.Http;

/// <summary>The pages that the <c>type</c> of a problem leads to.</summary>
public static class ProblemPages
{
    /// <summary>Adds <c>/problems</c> and <c>/problems/{slug}</c>.</summary>
    public static IEndpointRouteBuilder MapProblemPages(this IEndpointRouteBuilder routes)
    {
        var pages = routes.MapGroup("/problems").ExcludeFromDescription();
        pages.MapGet("", List);
        pages.MapGet("/{slug}", Get);
        return routes;
    }

    private static ContentHttpResult List()
    {
        var items = new StringBuilder();
        foreach (var kind in ProblemKinds.All)
        {
            items.Append(CultureInfo.InvariantCulture, $"<li><a href=\"{kind.Type}\">{kind.Status} {WebUtility.HtmlEncode(kind.Title)}</a></li>");
        }

        return Page("Problems", $"<p>What the service answers when it cannot do as asked (RFC 9457).</p><ul>{items}</ul>");
    }

    private static Results<ContentHttpResult, ProblemHttpResult> Get(string slug)
    {
        if (ProblemKinds.All.FirstOrDefault(k => k.Slug == slug) is not { } kind)
        {
            return Problems.NotFound($"There is no problem '{slug}'. /problems lists them all.");
        }

        return Page(kind.Title, $"""
            <p>Status {kind.Status}, type <code>{kind.Type}</code></p>
            <h2>When it happens</h2><p>{WebUtility.HtmlEncode(kind.Meaning)}</p>
            <h2>What to do</h2><p>{WebUtility.HtmlEncode(kind.NextStep)}</p>
            <p><a href="/problems">All problems</a> · <a href="/docs">Documentation</a></p>
            """);
    }

    private static ContentHttpResult Page(string title, string body) => TypedResults.Content(
        $"<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>{WebUtility.HtmlEncode(title)}</title></head><body><h1>{WebUtility.HtmlEncode(title)}</h1>{body}</body></html>",
        "text/html; charset=utf-8");
}
