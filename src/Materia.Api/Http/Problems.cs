using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Materia.Api.Http;

/// <summary>Makes the problems (RFC 9457) that calls answer with; <see cref="ProblemWriter"/> adds instance and traceId.</summary>
public static class Problems
{
    /// <summary>400: query or body cannot be read; <paramref name="faults"/> says where and what to do.</summary>
    public static ProblemHttpResult InvalidRequest(RequestFaults faults) =>
        Of(ProblemKinds.InvalidRequest, faults.Summary(), faults);

    /// <summary>400 with one fault.</summary>
    /// <param name="key">A JSON Pointer, or <c>?name</c> of a query parameter.</param>
    /// <param name="message">What is wrong and what to send instead.</param>
    public static ProblemHttpResult InvalidRequest(string key, string message) => InvalidRequest(One(key, message));

    /// <summary>422: the body has the right form but cannot be worked out; <paramref name="faults"/> says where and what to do.</summary>
    public static ProblemHttpResult Unprocessable(RequestFaults faults) =>
        Of(ProblemKinds.Unprocessable, faults.Summary(), faults);

    /// <summary>422 with one fault.</summary>
    /// <param name="key">A JSON Pointer, or <c>?name</c> of a query parameter.</param>
    /// <param name="message">What is wrong and what to send instead.</param>
    public static ProblemHttpResult Unprocessable(string key, string message) => Unprocessable(One(key, message));

    /// <summary>404: no such thing in the catalogue.</summary>
    /// <param name="detail">What was looked for, and the nearest that exists.</param>
    public static ProblemHttpResult NotFound(string detail) => Of(ProblemKinds.NotFound, detail);

    /// <summary>A problem of this kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="detail">What happened this time and what to do; by default the kind's own next step.</param>
    /// <param name="faults">What is wrong with the request, where that is the matter.</param>
    public static ProblemHttpResult Of(ProblemKind kind, string? detail = null, RequestFaults? faults = null) =>
        TypedResults.Problem(Details(kind, detail, faults));

    /// <summary>The same as a bare record, for code that is no endpoint.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="detail">What happened this time and what to do; by default the kind's own next step.</param>
    /// <param name="faults">What is wrong with the request, where that is the matter.</param>
    public static ProblemDetails Details(ProblemKind kind, string? detail = null, RequestFaults? faults = null)
    {
        var details = new ProblemDetails
        {
            Type = kind.Type,
            Title = kind.Title,
            Status = kind.Status,
            Detail = detail ?? kind.NextStep,
        };
        if (faults is not null)
        {
            details.Extensions["errors"] = faults.ByKey();
        }

        return details;
    }

    private static RequestFaults One(string key, string message)
    {
        var faults = new RequestFaults();
        faults.Add(key, message);
        return faults;
    }
}
