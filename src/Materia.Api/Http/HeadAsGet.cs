namespace Materia.Api.Http;

/// <summary>
/// Lets every GET answer HEAD too. The routes then see a GET; the server, which parsed the request, still knows it as HEAD
/// and sends the headers only.
/// </summary>
public sealed class HeadAsGet(RequestDelegate next)
{
    /// <summary>Handles one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (HttpMethods.IsHead(context.Request.Method))
        {
            context.Request.Method = HttpMethods.Get;
        }

        return next(context);
    }
}
