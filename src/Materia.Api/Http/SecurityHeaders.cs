namespace Materia.Api.Http;

/// <summary>Sets the headers that keep browsers from doing more with an answer than it is meant for.</summary>
public sealed class SecurityHeaders(RequestDelegate next)
{
    /// <summary>For data: nothing may be loaded from it, nothing may frame it.</summary>
    private const string DataPolicy = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

    /// <summary>For the pages for people: only this service's own files, nothing inline, forms to this service alone.</summary>
    private const string StrictPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'";

    private static readonly string[] ForPrograms = ["/v1", "/openapi", "/health", "/metrics"];

    /// <summary>
    /// For the API's documentation: only this service's own scripts, styles and data. Swagger UI sets style attributes and draws its icons from
    /// data URLs, hence the two exceptions.
    /// </summary>
    private const string PagePolicy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self'; connect-src 'self'; " +
        "frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

    /// <summary>Handles one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var path = context.Request.Path;
        var docs = path.StartsWithSegments("/docs") || path.StartsWithSegments("/problems");
        var page = docs || !Array.Exists(ForPrograms, p => path.StartsWithSegments(p));
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers.ContentSecurityPolicy = docs ? PagePolicy : page ? StrictPolicy : DataPolicy;
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = page ? "same-origin" : "cross-origin";
        return next(context);
    }
}
