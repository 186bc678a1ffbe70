namespace Materia.Api.Http;

/// <summary>Sets the headers that keep browsers from doing more with an answer than it is meant for.</summary>
public sealed class SecurityHeaders(RequestDelegate next)
{
    /// <summary>For data: nothing may be loaded from it, nothing may frame it.</summary>
    private const string DataPolicy = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

    /// <summary>
    /// For pages: only this service's own scripts, styles and data. Swagger UI sets style attributes and draws its icons from
    /// data URLs, hence the two exceptions.
    /// </summary>
    private const string PagePolicy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self'; connect-src 'self'; " +
        "frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

    /// <summary>Handles one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var path = context.Request.Path;
        var page = path.StartsWithSegments("/docs") || path.StartsWithSegments("/problems");
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers.ContentSecurityPolicy = page ? PagePolicy : DataPolicy;
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = page ? "same-origin" : "cross-origin";
        return next(context);
    }
}
