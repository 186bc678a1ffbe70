using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A CAS or EC number of an ingredient.</summary>
internal sealed class RegistryNumberRow : IngredientStatementRow
{
    public RegistryNumberRow(RowPlace place, RegistryNumber number)
        : base(place, number)
    {
        Registry = number.Registry;
        Number = number.Number;
    }

    /// <summary>For the reader of the database.</summary>
    private RegistryNumberRow()
    {
    }

    /// <inheritdoc cref="RegistryNumber.Registry"/>
    public Registry Registry { get; private init; }

    /// <inheritdoc cref="RegistryNumber.Number"/>
    public string Number { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public RegistryNumber ToRecord() => new()
    {
        Registry = Registry,
        Number = Number,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
