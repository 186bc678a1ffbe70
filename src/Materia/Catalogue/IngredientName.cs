using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>One name of an ingredient.</summary>
public sealed record IngredientName : Statement
{
    /// <summary>The name as it is written.</summary>
    public required string Text { get; init; }

    /// <summary>What sort of name it is.</summary>
    public required NameKind Kind { get; init; }

    /// <summary>The language as a BCP 47 tag, such as <c>fr</c> or <c>yo</c>; absent for INCI names.</summary>
    public string? Language { get; init; }
}

/// <summary>Sorts of name.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<NameKind>))]
public enum NameKind
{
    /// <summary>The English name that heads the record.</summary>
    Common,

    /// <summary>The name of the International Nomenclature of Cosmetic Ingredients.</summary>
    Inci,

    /// <summary>The Latin name of the plant or animal, accepted or former.</summary>
    Botanical,

    /// <summary>Another common name, in any language.</summary>
    Synonym,

    /// <summary>A title in a pharmacopoeia, current or historical.</summary>
    Pharmacopoeia,

    /// <summary>A chemical name.</summary>
    Chemical,

    /// <summary>A code such as an E number or a Colour Index number.</summary>
    Code,
}
