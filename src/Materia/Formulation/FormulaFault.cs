using System.Diagnostics.CodeAnalysis;

namespace Materia.Formulation;

/// <summary>Something in a submitted formula that has to be put right before anything can be computed.</summary>
/// <param name="Pointer">The JSON Pointer (RFC 6901) to the member concerned, relative to the formula; empty for the whole document.</param>
/// <param name="Message">What is wrong and what to do about it.</param>
[SuppressMessage("Naming", "CA1720", Justification = "A JSON Pointer is what RFC 6901 calls it; no machine pointer is meant.")]
public sealed record FormulaFault(string Pointer, string Message)
{
    /// <summary>The id that the catalogue does not know, where that is the fault, so that the nearest names can be offered.</summary>
    public string? UnknownIngredient { get; init; }
}
