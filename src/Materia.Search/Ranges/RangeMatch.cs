using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Search;

/// <summary>When a stored range answers a range that is asked for. Ends count as inside; an ingredient without a figure never answers.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<RangeMatch>))]
public enum RangeMatch
{
    /// <summary>At least one of the figures has a value in common with the range asked for.</summary>
    Overlap,

    /// <summary>Every one of the figures lies inside the range asked for, as "melts below skin temperature" needs it.</summary>
    Within,
}
