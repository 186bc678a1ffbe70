using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>How a statement was seen, from best to least. Comparing two values compares how far they can be trusted: the smaller is the better.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<Evidence>))]
public enum Evidence
{
    /// <summary>Read in the source that is named.</summary>
    Published,

    /// <summary>Read in a work that cites the origin; the source named is the citing work.</summary>
    Secondary,

    /// <summary>Trade knowledge that no one source carries.</summary>
    CommonPractice,

    /// <summary>Recalled and not checked in print.</summary>
    Memory,
}
