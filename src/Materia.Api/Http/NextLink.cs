using System.Text;
using System.Text.Encodings.Web;

namespace Materia.Api.Http;

/// <summary>The <c>Link</c> header to the next page (RFC 8288).</summary>
public static class NextLink
{
    /// <summary>Adds the address of the next page: the present one with the cursor in <c>after</c>. Without a cursor there is no next page and no header.</summary>
    public static void Add(HttpContext context, string? cursor)
    {
        if (cursor is null)
        {
            return;
        }

        var url = new StringBuilder(context.Request.PathBase + context.Request.Path).Append('?');
        foreach (var (name, values) in context.Request.Query.Where(p => p.Key != "after"))
        {
            foreach (var value in values)
            {
                url.Append(UrlEncoder.Default.Encode(name)).Append('=').Append(UrlEncoder.Default.Encode(value ?? "")).Append('&');
            }
        }

        context.Response.Headers.Link = $"<{url.Append("after=").Append(UrlEncoder.Default.Encode(cursor))}>; rel=\"next\"";
    }
}
