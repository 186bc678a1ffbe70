using Materia.Api.Serving;

namespace Materia.Api.Http;

/// <summary>
/// What every call under <c>/v1</c> asks of a request before its own code runs: that the caller takes what the call can give, and that each query
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

        var offered = (endpoint.Metadata.GetMetadata<OfferedTypes>() ?? OfferedTypes.Json).Types;
        if (MediaTypes.Choose(context.Request.Headers.Accept, offered) is null)
        {
            return ProblemWriter.WriteAsync(context, Problems.Details(ProblemKinds.NotAcceptable, $"This call answers as {string.Join(", ", offered)}. Send one of these as Accept, or leave the header out."));
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
}
