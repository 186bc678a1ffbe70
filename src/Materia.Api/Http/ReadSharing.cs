using Microsoft.AspNetCore.Cors.Infrastructure;
using Microsoft.Net.Http.Headers;

namespace Materia.Api.Http;

/// <summary>Lets pages of any origin read the catalogue (CORS). They may not POST: what is submitted is the maker's own.</summary>
public static class ReadSharing
{
    /// <summary>Sets the policy up.</summary>
    public static void Configure(CorsOptions options) => options.AddDefaultPolicy(policy => policy
        .AllowAnyOrigin()
        .WithMethods(HttpMethods.Get, HttpMethods.Head)
        .WithHeaders(HeaderNames.Accept, HeaderNames.IfNoneMatch)
        .WithExposedHeaders(
            HeaderNames.ETag, HeaderNames.Link, HeaderNames.Location, HeaderNames.RetryAfter, Serving.ReleaseHeaders.NumberHeader, Serving.ReleaseHeaders.DateHeader)
        .SetPreflightMaxAge(TimeSpan.FromHours(1)));

    /// <summary>Whether a request is of the sort that may come from another origin.</summary>
    public static bool Concerns(HttpContext context) => !HttpMethods.IsPost(context.Request.Method);
}
