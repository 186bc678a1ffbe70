namespace Materia.Catalogue.Regulated;

/// <summary>A substance or material that counts towards a limit or an allergen. One identity at least is given.</summary>
public sealed record RegulatedMember
{
    /// <summary>The name in the instrument.</summary>
    public required string Name { get; init; }

    /// <summary>Its CAS number, the first way by which it is recognised.</summary>
    public string? Cas { get; init; }

    /// <summary>Its INCI name, by which a material as a whole is recognised, such as an essential oil that is an entry itself.</summary>
    public string? InciName { get; init; }

    /// <summary>The id of a catalogue ingredient that is this material, where CAS number and INCI name do not tell it from another, such as a pressed from a distilled oil.</summary>
    public string? Ingredient { get; init; }

    /// <summary>What one part by mass of it counts [1], such as 0.8474 for sodium benzoate counted as benzoic acid; 1 where nothing is said.</summary>
    public decimal Factor { get; init; } = 1;
}
