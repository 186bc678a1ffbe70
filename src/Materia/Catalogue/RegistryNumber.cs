using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>A CAS or EC number that the ingredient is listed under.</summary>
public sealed record RegistryNumber : Statement
{
    /// <summary>The registry.</summary>
    public required Registry Registry { get; init; }

    /// <summary>The number with its hyphens; its check digit holds.</summary>
    public required string Number { get; init; }
}

/// <summary>The registries of substances.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<Registry>))]
public enum Registry
{
    /// <summary>The Chemical Abstracts Service registry.</summary>
    Cas,

    /// <summary>The European Community inventories (EINECS, ELINCS, NLP).</summary>
    Ec,
}
