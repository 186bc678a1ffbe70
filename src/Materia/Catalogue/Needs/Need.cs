using System.Text.Json.Serialization;

namespace Materia.Catalogue.Needs;

/// <summary>What a person says of hair, skin or choices, and what follows for a formula. It is a start to adjust, never a verdict nor medical advice.</summary>
public sealed record Need : Statement
{
    /// <summary>The key, such as <c>fine-strands</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>What it is about.</summary>
    public required NeedSubject Subject { get; init; }

    /// <summary>How somebody can tell, and what it asks of a product.</summary>
    public required string Text { get; init; }

    /// <summary>The key of the need that it cannot go with at one place, such as oily and dry skin.</summary>
    public string? Opposes { get; init; }

    /// <summary>What follows.</summary>
    public IReadOnlyList<NeedEffect> Effects { get; init; } = [];
}

/// <summary>What a need is about.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<NeedSubject>))]
public enum NeedSubject
{
    /// <summary>The strands of the hair.</summary>
    Strands,

    /// <summary>The scalp.</summary>
    Scalp,

    /// <summary>The skin.</summary>
    Skin,

    /// <summary>What somebody chooses to leave out.</summary>
    Choice,

    /// <summary>Where the product is kept and worn.</summary>
    Climate,

    /// <summary>Who uses it.</summary>
    Person,
}
