using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Materia.Formulation.OwnMaterials;
using Materia.Formulation.Sections;

namespace Materia.Formulation;

/// <summary>The JSON form of formulas and evaluations.</summary>
public static class FormulationJson
{
    /// <summary>
    /// Options that refuse unknown, repeated and misplaced members and numbers in quotes. Absent members are left out when
    /// writing; empty lists and noughts are written. Shared, therefore read-only.
    /// </summary>
    public static JsonSerializerOptions Options { get; } = Create();

    /// <summary>
    /// Gives the type of <see cref="OwnMaterial"/> a member for each property of the catalogue, and that of
    /// <see cref="Evaluation"/> a member for each section, so that neither list is written down twice.
    /// </summary>
    public static void AddMembers(JsonTypeInfo info)
    {
        ArgumentNullException.ThrowIfNull(info);
        if (info.Type == typeof(OwnMaterial))
        {
            foreach (var (property, name) in OwnProperties.Members)
            {
                var member = info.CreateJsonPropertyInfo(typeof(OwnFigure), name);
                member.Get = own => ((OwnMaterial)own).Figures.GetValueOrDefault(property);
                member.Set = (own, figure) =>
                {
                    if (figure is OwnFigure given)
                    {
                        ((OwnMaterial)own).Figures[property] = given;
                    }
                };
                info.Properties.Add(member);
            }
        }
        else if (info.Type == typeof(Evaluation))
        {
            foreach (var section in EvaluationSections.All)
            {
                var member = info.CreateJsonPropertyInfo(section.ResultType, section.Name);
                member.Get = evaluation => ((Evaluation)evaluation).Results.GetValueOrDefault(section);
                info.Properties.Add(member);
            }
        }
    }

    private static JsonSerializerOptions Create()
    {
        var options = new JsonSerializerOptions(JsonSerializerOptions.Strict)
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver().WithAddedModifier(AddMembers),
        };
        options.MakeReadOnly();
        return options;
    }
}
