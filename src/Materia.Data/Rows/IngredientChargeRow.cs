using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>The charge of an ingredient in water; one row at most for each, its ordinal is 0.</summary>
internal sealed class IngredientChargeRow : IngredientStatementRow
{
    public IngredientChargeRow(RowPlace place, ChargeStatement charge)
        : base(place, charge)
    {
        Charge = charge.Charge;
    }

    /// <summary>For the reader of the database.</summary>
    private IngredientChargeRow()
    {
    }

    /// <inheritdoc cref="ChargeStatement.Charge"/>
    public IonicCharge Charge { get; private init; }

    /// <summary>The catalogue's record of this row.</summary>
    public ChargeStatement ToRecord() => new()
    {
        Charge = Charge,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
