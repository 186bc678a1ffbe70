using System.Text.Json.Serialization;

namespace Materia.Catalogue.Needs;

/// <summary>One thing that follows from a need.</summary>
public sealed record NeedEffect : Statement
{
    /// <summary>The sort.</summary>
    public required NeedEffectKind Kind { get; init; }

    /// <summary>For a target: the property of the blend.</summary>
    public TargetProperty? Property { get; init; }

    /// <summary>For a target at a temperature: the temperature [Cel].</summary>
    public decimal? Temperature { get; init; }

    /// <summary>For a target of one fatty acid: its symbol.</summary>
    public string? Acid { get; init; }

    /// <summary>For a target: the least value, in the property's unit; open where absent.</summary>
    public decimal? Low { get; init; }

    /// <summary>For a target: the greatest value, in the property's unit; open where absent.</summary>
    public decimal? High { get; init; }

    /// <summary>For a target: how much it counts beside others, above 0 and at most 10 [1].</summary>
    public decimal? Weight { get; init; }

    /// <summary>For a preference or an exclusion: the set of ingredients, such as <c>group:stiff-waxes</c> or <c>allergen:tree-nut</c>.</summary>
    public string? Scope { get; init; }

    /// <summary>Why, in a sentence; for a caution the caution itself.</summary>
    public required string Reason { get; init; }
}

/// <summary>Sorts of things that follow from a need.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<NeedEffectKind>))]
public enum NeedEffectKind
{
    /// <summary>A range that a property of the blend should lie in.</summary>
    Target,

    /// <summary>Ingredients to favour.</summary>
    Prefer,

    /// <summary>Ingredients to hold back on, without a ban.</summary>
    Avoid,

    /// <summary>Ingredients to leave out.</summary>
    Exclude,

    /// <summary>Something to know.</summary>
    Caution,
}

/// <summary>Properties of a blend that a need can aim at.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<TargetProperty>))]
public enum TargetProperty
{
    /// <summary>Solid content of the fat phase at a temperature [%].</summary>
    SolidContent,

    /// <summary>The temperature at which it is clear [Cel].</summary>
    ClearPoint,

    /// <summary>Dynamic viscosity at a temperature, the fats melted [mPa.s].</summary>
    Viscosity,

    /// <summary>Iodine value of the lipid phase [g/(100.g)].</summary>
    IodineValue,

    /// <summary>Saponification value of the lipid phase [mg/g].</summary>
    SaponificationValue,

    /// <summary>Density at a temperature [g/mL].</summary>
    Density,

    /// <summary>The oxidisability index of the fatty acids [1].</summary>
    Oxidisability,

    /// <summary>The share of one fatty acid in all fatty acids [%].</summary>
    FattyAcid,

    /// <summary>Saturated fatty acids [%].</summary>
    Saturated,

    /// <summary>Monounsaturated fatty acids [%].</summary>
    Monounsaturated,

    /// <summary>Polyunsaturated fatty acids [%].</summary>
    Polyunsaturated,

    /// <summary>The HLB that the oil phase asks for [1].</summary>
    RequiredHlb,

    /// <summary>The highest comedogenic grade of any line, 0 to 5 [1].</summary>
    Comedogenic,
}
