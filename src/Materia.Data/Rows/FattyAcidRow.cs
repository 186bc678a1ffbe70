using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A fatty acid or fatty alcohol of the reference table.</summary>
internal sealed class FattyAcidRow : StatementRow
{
    public FattyAcidRow(int release, int ordinal, FattyAcid acid)
        : base(release, ordinal, acid)
    {
        Symbol = acid.Symbol;
        Name = acid.Name;
        SystematicName = acid.SystematicName;
        Cas = acid.Cas;
        Carbons = acid.Carbons;
        DoubleBonds = acid.DoubleBonds;
        Hydroxyls = acid.Hydroxyls;
        Alcohol = acid.Alcohol;
        MolarMass = acid.MolarMass;
        MeltingPoint = acid.MeltingPoint;
    }

    /// <summary>For the reader of the database.</summary>
    private FattyAcidRow()
    {
    }

    /// <inheritdoc cref="FattyAcid.Symbol"/>
    public string Symbol { get; private init; } = "";

    /// <inheritdoc cref="FattyAcid.Name"/>
    public string Name { get; private init; } = "";

    /// <inheritdoc cref="FattyAcid.SystematicName"/>
    public string? SystematicName { get; private init; }

    /// <inheritdoc cref="FattyAcid.Cas"/>
    public string? Cas { get; private init; }

    /// <inheritdoc cref="FattyAcid.Carbons"/>
    public int Carbons { get; private init; }

    /// <inheritdoc cref="FattyAcid.DoubleBonds"/>
    public int DoubleBonds { get; private init; }

    /// <inheritdoc cref="FattyAcid.Hydroxyls"/>
    public int Hydroxyls { get; private init; }

    /// <inheritdoc cref="FattyAcid.Alcohol"/>
    public bool Alcohol { get; private init; }

    /// <inheritdoc cref="FattyAcid.MolarMass"/>
    public decimal MolarMass { get; private init; }

    /// <inheritdoc cref="FattyAcid.MeltingPoint"/>
    public decimal? MeltingPoint { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public FattyAcid ToRecord() => new()
    {
        Symbol = Symbol,
        Name = Name,
        SystematicName = SystematicName,
        Cas = Cas,
        Carbons = Carbons,
        DoubleBonds = DoubleBonds,
        Hydroxyls = Hydroxyls,
        Alcohol = Alcohol,
        MolarMass = MolarMass,
        MeltingPoint = MeltingPoint,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
