using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>What an ingredient is made from.</summary>
public sealed record Origin : Statement
{
    /// <summary>The kingdom it comes from.</summary>
    public required OriginKind From { get; init; }

    /// <summary>The accepted Latin name of the plant or animal, where it comes from one.</summary>
    public string? Species { get; init; }

    /// <summary>The part used, such as <c>seed</c> or <c>flowering tops</c>.</summary>
    public string? Part { get; init; }

    /// <summary>How it is taken from the part, such as <c>steam distillation</c>.</summary>
    public string? Extraction { get; init; }

    /// <summary>Families that people with an allergy look for.</summary>
    public IReadOnlyList<AllergenFamily> AllergenFamilies { get; init; } = [];
}

/// <summary>The kingdoms that raw materials come from.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<OriginKind>))]
public enum OriginKind
{
    /// <summary>From a plant.</summary>
    Plant,

    /// <summary>From an animal, insects included.</summary>
    Animal,

    /// <summary>Dug or made from minerals.</summary>
    Mineral,

    /// <summary>Made by fermentation.</summary>
    Fermentation,

    /// <summary>Made by chemical synthesis or changed so far that its first origin no longer tells.</summary>
    Synthetic,
}

/// <summary>Families of allergens by the raw material they come from.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<AllergenFamily>))]
public enum AllergenFamily
{
    /// <summary>Tree nuts, shea excepted where law excepts it.</summary>
    TreeNut,

    /// <summary>Peanut.</summary>
    Peanut,

    /// <summary>Soya.</summary>
    Soy,

    /// <summary>Gluten-bearing cereals.</summary>
    Gluten,

    /// <summary>Sesame.</summary>
    Sesame,

    /// <summary>Mustard and its close kin.</summary>
    Mustard,

    /// <summary>Wool wax.</summary>
    Wool,

    /// <summary>Bee products.</summary>
    Bee,

    /// <summary>Plants whose proteins cross-react with latex.</summary>
    LatexRelated,
}
