using System.Collections.Frozen;

namespace Materia.Api.Http;

/// <summary>All sorts of problem.</summary>
public static class ProblemKinds
{
    /// <summary>The query string or the body cannot be read as what the call expects.</summary>
    public static ProblemKind InvalidRequest { get; } = new(
        "invalid-request", 400, "The request is not valid.",
        "A query parameter or a member of the body is unknown, missing, of the wrong form or out of bounds.",
        "Read the errors member: each key names the query parameter (?limit) or the place in the body (a JSON Pointer such as /lines/0/percent), each text says what to send instead.");

    /// <summary>There is nothing at this address.</summary>
    public static ProblemKind NotFound { get; } = new(
        "not-found", 404, "There is nothing at this address.",
        "The path is not one of the service's, or the id in it is not in the catalogue.",
        "Check the spelling; the detail names the nearest ids where there are any. GET /v1/suggestions?text= finds ids by any name.");

    /// <summary>The address exists but not for this method.</summary>
    public static ProblemKind MethodNotAllowed { get; } = new(
        "method-not-allowed", 405, "This address does not take that method.",
        "The path exists, but not for the HTTP method that was used.",
        "Use a method that the Allow header lists.");

    /// <summary>The caller accepts no form that the service can give.</summary>
    public static ProblemKind NotAcceptable { get; } = new(
        "not-acceptable", 406, "The answer does not come in that form.",
        "The Accept header rules out every form in which this call answers; most answer as application/json only.",
        "Send a form that the detail names as Accept, or leave the header out.");

    /// <summary>The body is larger than the service takes.</summary>
    public static ProblemKind TooLarge { get; } = new(
        "too-large", 413, "The body is too large.",
        "The body is larger than the service's limit; nothing of it was used.",
        "Send a smaller body. A formula of some hundred lines fits many times over.");

    /// <summary>The body is not JSON.</summary>
    public static ProblemKind UnsupportedMediaType { get; } = new(
        "unsupported-media-type", 415, "The body must be JSON.",
        "The Content-Type header is missing or names something other than JSON in UTF-8.",
        "Send Content-Type: application/json and a JSON body in UTF-8.");

    /// <summary>The body was read but what it asks cannot be done.</summary>
    public static ProblemKind Unprocessable { get; } = new(
        "unprocessable", 422, "The request was read but cannot be worked out.",
        "The body has the right form, but what it says does not hold together, such as percentages that do not add up to 100.",
        "Read the errors member: each key is the place in the body (a JSON Pointer), each text says what to change.");

    /// <summary>The client asked too often.</summary>
    public static ProblemKind TooManyRequests { get; } = new(
        "too-many-requests", 429, "Too many requests.",
        "This address has used up its requests for the present minute.",
        "Wait for the number of seconds in the Retry-After header, then go on.");

    /// <summary>The service made a mistake.</summary>
    public static ProblemKind InternalError { get; } = new(
        "internal-error", 500, "The service made a mistake.",
        "Something went wrong inside the service; the request was not at fault.",
        "Try again later; if it stays, report it with the traceId.");

    /// <summary>The service has no catalogue yet.</summary>
    public static ProblemKind NotReady { get; } = new(
        "not-ready", 503, "The catalogue is not loaded yet.",
        "The service has just started or cannot reach its database, so it has no catalogue to answer from.",
        "Wait for the number of seconds in the Retry-After header, then try again. GET /health/ready tells the reason.");

    /// <summary>All of them, by status.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } =
    [
        InvalidRequest, NotFound, MethodNotAllowed, NotAcceptable, TooLarge, UnsupportedMediaType, Unprocessable, TooManyRequests,
        InternalError, NotReady,
    ];

    private static readonly FrozenDictionary<int, ProblemKind> ByStatus = All.ToFrozenDictionary(k => k.Status);

    /// <summary>The sort that goes with a status code, or <see langword="null"/>.</summary>
    public static ProblemKind? OfStatus(int status) => ByStatus.GetValueOrDefault(status);
}
