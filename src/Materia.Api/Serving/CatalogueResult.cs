using System.Reflection;
using System.Text.Json;
using Materia.Api.Http;
using Microsoft.AspNetCore.Http.Metadata;

namespace Materia.Api.Serving;

/// <summary>A read of the catalogue: JSON with an entity tag, a lifetime and the caller's coding; 304 when the caller holds it already.</summary>
/// <typeparam name="T">What the JSON holds.</typeparam>
public sealed class CatalogueResult<T> : IResult, IEndpointMetadataProvider
{
    private readonly ServedRelease? served;
    private readonly T? value;
    private readonly Representation? made;

    /// <summary>Answers with <paramref name="value"/>, which follows from <paramref name="served"/> and the URL alone.</summary>
    public CatalogueResult(ServedRelease served, T value) => (this.served, this.value) = (served, value);

    /// <summary>Answers with bytes made beforehand.</summary>
    public CatalogueResult(Representation made) => this.made = made;

    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        var request = httpContext.Request;
        var representation = made ?? served!.Represent(request.Path + request.QueryString, JsonSerializer.SerializeToUtf8Bytes(value, ApiJson.Writing));
        return representation.WriteAsync(httpContext);
    }

    /// <summary>Tells the OpenAPI document of both answers.</summary>
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(T), ["application/json"]));
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status304NotModified, typeof(void)));
    }
}
