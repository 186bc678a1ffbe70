namespace Materia.Api.Http;

/// <summary>A sort of problem that the service answers with (RFC 9457); its page stands at <see cref="Type"/>.</summary>
/// <param name="Slug">The last segment of the type URL.</param>
/// <param name="Status">The HTTP status code that it comes with.</param>
/// <param name="Title">What went wrong, the same words each time.</param>
/// <param name="Meaning">When it happens, for the page.</param>
/// <param name="NextStep">What the caller can do, for the page.</param>
public sealed record ProblemKind(string Slug, int Status, string Title, string Meaning, string NextStep)
{
    /// <summary>The problem type: a relative URL of this service.</summary>
    public string Type { get; } = "/problems/" + Slug;
}
