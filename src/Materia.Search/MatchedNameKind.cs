using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Search;

/// <summary>What sort of name or number a search found, in the order that breaks ties.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<MatchedNameKind>))]
public enum MatchedNameKind
{
    /// <summary>The English name that heads the record.</summary>
    Common,

    /// <summary>The INCI name.</summary>
    Inci,

    /// <summary>A Latin name of the plant or animal.</summary>
    Botanical,

    /// <summary>Another common name, in any language.</summary>
    Synonym,

    /// <summary>A title in a pharmacopoeia.</summary>
    Pharmacopoeia,

    /// <summary>A chemical name.</summary>
    Chemical,

    /// <summary>A code such as an E number.</summary>
    Code,

    /// <summary>A CAS number.</summary>
    Cas,

    /// <summary>An EC number.</summary>
    Ec,
}
