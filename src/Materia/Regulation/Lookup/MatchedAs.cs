using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Regulation.Lookup;

/// <summary>How a limit names something of what was asked for.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<MatchedAs>))]
public enum MatchedAs
{
    /// <summary>It names the substance or the ingredient itself.</summary>
    Itself,

    /// <summary>It names a part of the ingredient.</summary>
    Part,

    /// <summary>It names a constituent of the ingredient or of one of its parts.</summary>
    Constituent,
}
