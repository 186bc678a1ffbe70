using System.Text.Json.Serialization;

namespace Materia.Catalogue.Regulated;

/// <summary>Who sets a limit. Verdicts of different bodies stand side by side and are never merged.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<Authority>))]
public enum Authority
{
    /// <summary>The law of the European Union, and of Northern Ireland with it.</summary>
    Eu,

    /// <summary>The law of Great Britain.</summary>
    Gb,

    /// <summary>The federal law of the United States.</summary>
    Us,

    /// <summary>The standards of the fragrance trade.</summary>
    Ifra,

    /// <summary>An opinion of a scientific committee or panel, or guidance; not law.</summary>
    Opinion,
}
