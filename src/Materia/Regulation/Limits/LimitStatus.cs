using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Regulation.Limits;

/// <summary>How a share stands to a limit, by the greatest share that the composition of the materials allows.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<LimitStatus>))]
public enum LimitStatus
{
    /// <summary>Over the limit, or not allowed at all.</summary>
    Exceeded,

    /// <summary>It cannot be told: a material may hold the substance and nobody says how much, or the rule is a condition that a share does not show.</summary>
    Unknown,

    /// <summary>Within the limit, by less than a fifth of it.</summary>
    Near,

    /// <summary>Within the limit, and every material that could hold the substance is accounted for.</summary>
    Within,
}
