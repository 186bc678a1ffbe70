using Materia.Api.Serving;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace Materia.Api.Http;

/// <summary>
/// What every call under <c>/v1</c> asks of a request before its own code runs: that the caller takes JSON, and that each query
/// parameter is one the call knows. Runs after routing.
/// </summary>
public sealed class RequestChecks(RequestDelegate next)
{
    private static readonly AcceptedQuery Nothing = new([]);

    /// <summary>Handles one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (context.Features.Get<ServedRelease>() is null || context.GetEndpoint() is not RouteEndpoint endpoint)
        {
            return next(context);
        }

        if (!TakesJson(context.Request.Headers.Accept))
        {
            return ProblemWriter.WriteAsync(context, Problems.Details(ProblemKinds.NotAcceptable));
        }

        if (!context.Request.QueryString.HasValue)
        {
            return next(context);
        }

        var accepted = endpoint.Metadata.GetMetadata<AcceptedQuery>() ?? Nothing;
        var faults = new RequestFaults();
        foreach (var (name, _) in context.Request.Query)
        {
            if (!accepted.Takes(name))
            {
                faults.Add("?" + name, $"There is no query parameter '{name}' here. {Advice(name, accepted)}");
            }
        }

        return faults.Any
            ? ProblemWriter.WriteAsync(context, Problems.Details(ProblemKinds.InvalidRequest, faults.Summary(), faults))
            : next(context);
    }

    private static string Advice(string name, AcceptedQuery accepted) =>
        NearestWord.Of(name, accepted.Parameters.Select(p => p.Name)) is { } nearest ? $"Did you mean '{nearest}'?"
        : accepted.Parameters.Count == 0 ? "This call takes none; leave it out."
        : $"This call takes {string.Join(", ", accepted.Parameters.Select(p => p.Name))}.";

    private static bool TakesJson(StringValues accept)
    {
        if (accept.Count == 0 || accept is ["*/*"] or ["application/json"])
        {
            return true;
        }

        if (!MediaTypeHeaderValue.TryParseList(accept, out var ranges))
        {
            return true;
        }

        // The most specific range decides (RFC 9110 section 12.5.1): exact, then application/*, then */*.
        var best = ranges
            .Where(range => Specificity(range) > 0)
            .OrderByDescending(Specificity)
            .FirstOrDefault();
        return best is not null && best.Quality is not 0;
    }

    private static int Specificity(MediaTypeHeaderValue range) => range.MediaType.Value?.ToLowerInvariant() switch
    {
        "application/json" => 3,
        "application/*" => 2,
        "*/*" => 1,
        _ => 0,
    };
}
