using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Formulation;

/// <summary>Markets whose rules differ.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<Market>))]
public enum Market
{
    /// <summary>The European Union.</summary>
    Eu,

    /// <summary>The United Kingdom.</summary>
    Uk,

    /// <summary>The United States of America.</summary>
    Us,
}
