using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Formulation.Making;

/// <summary>What a step of making belongs to.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<MakingStage>))]
public enum MakingStage
{
    /// <summary>Cleaning and weighing.</summary>
    Prepare,

    /// <summary>Heating the water and what dissolves in it.</summary>
    Water,

    /// <summary>Melting what is solid.</summary>
    Melt,

    /// <summary>Warming oils with the melt.</summary>
    Oil,

    /// <summary>Stirring together without heat.</summary>
    Blend,

    /// <summary>Bringing water and oil together.</summary>
    Emulsify,

    /// <summary>Letting it cool.</summary>
    Cool,

    /// <summary>Stirring in or mixing powders.</summary>
    Powder,

    /// <summary>Adding what is volatile or suffers from heat.</summary>
    CoolDown,

    /// <summary>Measuring and setting the pH.</summary>
    Check,

    /// <summary>Chilling before whipping.</summary>
    Chill,

    /// <summary>Whipping air in.</summary>
    Whip,

    /// <summary>Filling.</summary>
    Fill,

    /// <summary>Standing until it has set.</summary>
    Set,
}
