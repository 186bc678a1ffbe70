namespace Materia.Catalogue;

/// <summary>A fatty acid or fatty alcohol of the reference table.</summary>
public sealed record FattyAcid : Statement
{
    /// <summary>The symbol, such as <c>18:1n-9</c>; alcohols end in <c>-ol</c>. A symbol without a position, such as <c>18:1</c>, is the undifferentiated total.</summary>
    public required string Symbol { get; init; }

    /// <summary>The common name.</summary>
    public required string Name { get; init; }

    /// <summary>The systematic name.</summary>
    public string? SystematicName { get; init; }

    /// <summary>The CAS number, where the symbol means one substance.</summary>
    public string? Cas { get; init; }

    /// <summary>Carbon atoms of the chain, branches and rings included.</summary>
    public required int Carbons { get; init; }

    /// <summary>Carbon-carbon double bonds.</summary>
    public required int DoubleBonds { get; init; }

    /// <summary>Hydroxyl groups on the chain, the carboxyl group and an alcohol's own group apart.</summary>
    public int Hydroxyls { get; init; }

    /// <summary>True for a fatty alcohol.</summary>
    public bool Alcohol { get; init; }

    /// <summary>Molar mass of the free acid or alcohol [g/mol].</summary>
    public required decimal MolarMass { get; init; }

    /// <summary>Melting point of the pure substance [Cel]; the statement's source and grade are this figure's.</summary>
    public decimal? MeltingPoint { get; init; }
}
