namespace Materia.Api.Http;

/// <summary>A call that works as it is pasted, as endpoint metadata for the OpenAPI document.</summary>
/// <param name="Url">Path and query.</param>
public sealed record CallExample(string Url);

/// <summary>Declares examples of endpoints.</summary>
public static class CallExampleExtensions
{
    /// <summary>Gives the endpoint an example; the tests call each one.</summary>
    public static TBuilder WithExample<TBuilder>(this TBuilder endpoint, string url)
        where TBuilder : IEndpointConventionBuilder => endpoint.WithMetadata(new CallExample(url));
}
