using System.Diagnostics;
using Microsoft.AspNetCore.Mvc;

namespace Materia.Api.Http;

/// <summary>
/// Writes every problem, wherever it comes from, in one form: as <c>application/problem+json</c> even to callers whose Accept
/// header rules it out (RFC 9110 section 15.5.7 allows that), with <c>instance</c> and <c>traceId</c>, and not to be cached.
/// </summary>
public sealed class ProblemWriter : IProblemDetailsWriter
{
    /// <summary>The media type of problems.</summary>
    public const string MediaType = "application/problem+json";

    /// <inheritdoc/>
    public bool CanWrite(ProblemDetailsContext context) => true;

    /// <inheritdoc/>
    public ValueTask WriteAsync(ProblemDetailsContext context) => new(WriteAsync(context.HttpContext, context.ProblemDetails));

    /// <summary>Answers with <paramref name="problem"/>.</summary>
    public static Task WriteAsync(HttpContext context, ProblemDetails problem)
    {
        var status = problem.Status ?? context.Response.StatusCode;
        if (problem.Detail is null && ProblemKinds.OfStatus(status) is { } kind)
        {
            (problem.Type, problem.Title, problem.Detail) = (kind.Type, kind.Title, kind.NextStep);
        }

        problem.Status = status;
        problem.Instance ??= context.Request.PathBase + context.Request.Path + context.Request.QueryString;
        problem.Extensions["traceId"] = Activity.Current?.Id ?? context.TraceIdentifier;
        context.Response.StatusCode = status;
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.WriteAsJsonAsync(problem, ApiJson.Options, MediaType, context.RequestAborted);
    }
}
