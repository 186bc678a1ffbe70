using System.Text.Json.Nodes;

namespace Materia.Api.Http;

/// <summary>A query parameter that a call takes: what the OpenAPI document says of it, and what the check of unknown parameters allows.</summary>
/// <param name="Name">The name in the query string.</param>
/// <param name="Description">What it does, its form, bounds and default.</param>
public sealed record QueryParameter(string Name, string Description)
{
    /// <summary>The sort of one value.</summary>
    public QueryValue Value { get; init; }

    /// <summary>A value that works as it stands.</summary>
    public JsonNode? Example { get; init; }

    /// <summary>The words that it takes, where they are a closed list.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>The least value of a number.</summary>
    public int? Least { get; init; }

    /// <summary>The greatest value of a number.</summary>
    public int? Greatest { get; init; }

    /// <summary>Whether it may stand several times.</summary>
    public bool Repeatable { get; init; }

    /// <summary>Whether the call cannot do without it.</summary>
    public bool Required { get; init; }
}

/// <summary>What sort of value a query parameter has.</summary>
public enum QueryValue
{
    /// <summary>Text.</summary>
    Text,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary><c>true</c> or <c>false</c>.</summary>
    Boolean,
}

/// <summary>The query parameters of an endpoint, as endpoint metadata.</summary>
/// <param name="Parameters">All that it takes.</param>
public sealed record AcceptedQuery(IReadOnlyList<QueryParameter> Parameters)
{
    /// <summary>Whether the endpoint takes a parameter of this name.</summary>
    public bool Takes(string name)
    {
        foreach (var parameter in Parameters)
        {
            if (string.Equals(parameter.Name, name, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>Declares the query parameters of endpoints.</summary>
public static class QueryParameterExtensions
{
    /// <summary>Says which query parameters the endpoint takes; all others are refused with 400. An endpoint without this takes none.</summary>
    public static TBuilder WithQuery<TBuilder>(this TBuilder endpoint, params QueryParameter[] parameters)
        where TBuilder : IEndpointConventionBuilder => endpoint.WithMetadata(new AcceptedQuery(parameters));
}
