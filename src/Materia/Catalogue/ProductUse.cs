using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>A type of product: what a formula is for.</summary>
public sealed record ProductUse : Statement
{
    /// <summary>The key, such as <c>hair-mask-rinse-off</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it stays on the body or is washed off.</summary>
    public required Exposure Exposure { get; init; }

    /// <summary>The part of the body it is used on.</summary>
    public required BodySite Site { get; init; }

    /// <summary>The category of the fragrance standards, such as <c>5A</c>; absent where the standards do not place it.</summary>
    public string? IfraCategory { get; init; }

    /// <summary>What to know before it is used on children or near the eyes.</summary>
    public string? Caution { get; init; }

    /// <summary>What it is and how it is used, in a sentence.</summary>
    public required string Description { get; init; }
}

/// <summary>How long a product stays on the body.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<Exposure>))]
public enum Exposure
{
    /// <summary>Stays on.</summary>
    LeaveOn,

    /// <summary>Is washed off.</summary>
    RinseOff,
}

/// <summary>Parts of the body that products are used on.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<BodySite>))]
public enum BodySite
{
    /// <summary>The hair and scalp.</summary>
    Hair,

    /// <summary>The face.</summary>
    Face,

    /// <summary>The lips.</summary>
    Lips,

    /// <summary>The body.</summary>
    Body,

    /// <summary>The hands.</summary>
    Hands,

    /// <summary>The feet.</summary>
    Feet,

    /// <summary>The armpits.</summary>
    Armpits,

    /// <summary>The nails.</summary>
    Nails,
}
