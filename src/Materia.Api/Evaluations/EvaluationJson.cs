using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Materia.Formulation;

namespace Materia.Api.Evaluations;

/// <summary>The JSON of evaluations at the edge of the service.</summary>
public static class EvaluationJson
{
    /// <summary>The options that answers are written with: those of <see cref="FormulationJson"/>, computed numbers to four significant digits, solid contents to a hundredth of a percent.</summary>
    public static JsonSerializerOptions Options { get; } = Create();

    /// <summary>Lets the OpenAPI document see the members that formulas and evaluations take from tables.</summary>
    public static IServiceCollection AddEvaluations(this IServiceCollection services) => services.PostConfigure<Microsoft.AspNetCore.Http.Json.JsonOptions>(json =>
        json.SerializerOptions.TypeInfoResolver = json.SerializerOptions.TypeInfoResolver?.WithAddedModifier(FormulationJson.AddMembers));

    private static JsonSerializerOptions Create()
    {
        var options = new JsonSerializerOptions(FormulationJson.Options);
        options.TypeInfoResolver = options.TypeInfoResolver?.WithAddedModifier(SolidPercent.Round);
        options.Converters.Add(new SignificantDigits());
        options.MakeReadOnly();
        return options;
    }
}
