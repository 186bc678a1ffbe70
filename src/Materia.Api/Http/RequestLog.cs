using System.Diagnostics;

namespace Materia.Api.Http;

/// <summary>Logs one line for each request: method, path, status and time taken. Query strings and bodies are the caller's own and stay out.</summary>
public sealed class RequestLog(RequestDelegate next, ILogger<RequestLog> log)
{
    /// <summary>Handles one request.</summary>
    public async Task InvokeAsync(HttpContext context)
    {
        if (!log.IsEnabled(LogLevel.Information))
        {
            await next(context);
            return;
        }

        var (method, path, start) = (context.Request.Method, context.Request.Path.Value, Stopwatch.GetTimestamp());
        try
        {
            await next(context);
        }
        finally
        {
            log.LogInformation(
                "{Method} {Path} {Status} {Milliseconds:0.0} ms", method, path, context.Response.StatusCode, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }
    }
}
