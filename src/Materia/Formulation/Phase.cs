using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Formulation;

/// <summary>The phases that a line can be worked in.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<Phase>))]
public enum Phase
{
    /// <summary>Fats, waxes and what dissolves in them, melted together.</summary>
    Oil,

    /// <summary>Water and what dissolves in it.</summary>
    Water,

    /// <summary>Powders that are mixed dry or rubbed down before they join.</summary>
    Powder,

    /// <summary>What goes in after the heat is off, because it is volatile or suffers from heat.</summary>
    CoolDown,
}
