using System.Globalization;

namespace Materia.Api.Http;

/// <summary>
/// Refuses bodies that are too large, before or while they are read. The server's own limit would cut the connection, and a
/// client that is still sending would never hear why; here it may finish (<see cref="Drained"/>) and read the 413.
/// </summary>
public sealed class BodyLimit(RequestDelegate next, MateriaSettings settings)
{
    /// <summary>How many times the limit a refused body may measure and still be taken in and thrown away; beyond it the server cuts.</summary>
    private const int DrainedTimes = 64;

    /// <summary>The server's own limit [byte], up to which it takes in what was refused.</summary>
    public static long Drained(MateriaSettings settings) => settings.RequestBodyLimit * DrainedTimes;

    /// <summary>Handles one request.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var request = context.Request;
        if (request.ContentLength > settings.RequestBodyLimit)
        {
            var detail = string.Create(
                CultureInfo.InvariantCulture, $"The body has {request.ContentLength} bytes; {settings.RequestBodyLimit} at most. Nothing of it was used; send a smaller one.");
            return ProblemWriter.WriteAsync(context, Problems.Details(ProblemKinds.TooLarge, detail));
        }

        if (request.ContentLength is null && HttpMethods.IsPost(request.Method))
        {
            request.Body = new LimitedStream(request.Body, settings.RequestBodyLimit);
        }

        return next(context);
    }
}
