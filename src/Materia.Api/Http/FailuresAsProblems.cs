using Materia.Api.Pages.Failures;
using Microsoft.Net.Http.Headers;

namespace Materia.Api.Http;

/// <summary>
/// Turns whatever goes wrong further in, and every bare error status, into a problem. Unlike the framework's exception handler
/// it keeps the headers that were set on the way in (release, security).
/// </summary>
public sealed class FailuresAsProblems(RequestDelegate next, ILogger<FailuresAsProblems> log)
{
    /// <summary>Handles one request.</summary>
    public async Task InvokeAsync(HttpContext context)
    {
        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The client went away; nobody is left to answer. 499 is what proxies log for it.
            context.Response.StatusCode = StatusCodes.Status499ClientClosedRequest;
            return;
        }
        catch (BadHttpRequestException fault) when (!context.Response.HasStarted)
        {
            await AnswerAsync(context, fault.StatusCode);
            return;
        }
        catch (Exception fault) when (!context.Response.HasStarted)
        {
            log.LogError(fault, "{Method} {Path} failed", context.Request.Method, context.Request.Path.Value);
            await AnswerAsync(context, StatusCodes.Status500InternalServerError);
            return;
        }

        var response = context.Response;
        if (response.StatusCode >= 400 && !response.HasStarted && response.ContentLength is null && response.ContentType is null)
        {
            await AnswerAsync(context, response.StatusCode);
        }
    }

    private static Task AnswerAsync(HttpContext context, int status)
    {
        var headers = context.Response.Headers;
        headers.Remove(HeaderNames.ETag);
        headers.Remove(HeaderNames.ContentEncoding);
        headers.ContentLength = null;
        if (headers.Allow.Count > 0)
        {
            // Every GET answers HEAD as well (HeadAsGet), which the routes cannot know.
            headers.Allow = headers.Allow.ToString().Replace("GET", "GET, HEAD", StringComparison.Ordinal);
        }

        context.Response.StatusCode = status;
        if (FailurePages.Concerns(context))
        {
            return FailurePages.WriteAsync(context, status);
        }

        return ProblemWriter.WriteAsync(context, ProblemKinds.OfStatus(status) is { } kind ? Problems.Details(kind) : new() { Status = status });
    }
}
