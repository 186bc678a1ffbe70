using System.Text.Json;
using System.Text.Json.Serialization;
using Materia.Api.Evaluations;
using Materia.Api.Ingredients;
using Materia.Catalogue;

namespace Materia.Api.Http;

/// <summary>The JSON of the service: the catalogue's own form, so that a record reads the same in a seed file and in an answer.</summary>
public static class ApiJson
{
    /// <summary>The options that answers are written with and bodies are read with.</summary>
    public static JsonSerializerOptions Options => CatalogueJson.Options;

    /// <summary>The same form for writing answers, with what was written beforehand taken over as it is.</summary>
    public static JsonSerializerOptions Writing { get; } = new(CatalogueJson.Options) { Converters = { new PreparedFigures.Writer(), new ComputedFiguresWriter(), new SignificantDigits() } };

    /// <summary>Copies <see cref="Options"/> into options that the framework made.</summary>
    public static void CopyTo(JsonSerializerOptions options)
    {
        options.PropertyNamingPolicy = Options.PropertyNamingPolicy;
        options.PropertyNameCaseInsensitive = false;
        options.DefaultIgnoreCondition = Options.DefaultIgnoreCondition;
        options.Encoder = Options.Encoder;
        options.NumberHandling = JsonNumberHandling.Strict;
        options.UnmappedMemberHandling = Options.UnmappedMemberHandling;
        options.AllowDuplicateProperties = Options.AllowDuplicateProperties;
        options.RespectNullableAnnotations = Options.RespectNullableAnnotations;
        options.RespectRequiredConstructorParameters = Options.RespectRequiredConstructorParameters;
        options.TypeInfoResolver = Options.TypeInfoResolver;
    }
}
