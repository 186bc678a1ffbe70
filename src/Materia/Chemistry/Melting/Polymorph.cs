using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>Crystal forms of a triacylglycerol, from the least to the most stable.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<Polymorph>))]
public enum Polymorph
{
    /// <summary>Hexagonal packing, formed by quick cooling.</summary>
    Alpha,

    /// <summary>Orthorhombic packing.</summary>
    BetaPrime,

    /// <summary>Triclinic packing, the most stable.</summary>
    Beta,
}
