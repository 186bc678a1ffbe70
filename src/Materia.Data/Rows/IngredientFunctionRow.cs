using Materia.Catalogue;

namespace Materia.Data.Rows;

/// <summary>A function of an ingredient.</summary>
internal sealed class IngredientFunctionRow : IngredientStatementRow
{
    public IngredientFunctionRow(RowPlace place, FunctionStatement statement)
        : base(place, statement)
    {
        Function = statement.Function;
    }

    /// <summary>For the reader of the database.</summary>
    private IngredientFunctionRow()
    {
    }

    /// <inheritdoc cref="FunctionStatement.Function"/>
    public string Function { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public FunctionStatement ToRecord() => new()
    {
        Function = Function,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
