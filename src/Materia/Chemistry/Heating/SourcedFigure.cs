using Materia.Catalogue;

namespace Materia.Chemistry.Heating;

/// <summary>A figure that a method sets for want of one about the material at hand, with where it comes from.</summary>
/// <param name="What">What it is.</param>
/// <param name="Value">The value computed with, in <paramref name="Unit"/>.</param>
/// <param name="Low">The lower end of what is usual.</param>
/// <param name="High">The upper end of what is usual.</param>
/// <param name="Unit">The UCUM code of the unit.</param>
/// <param name="Evidence">How it was seen.</param>
/// <param name="Source">The key of the source.</param>
/// <param name="Locator">Where in the source.</param>
public sealed record SourcedFigure(string What, double Value, double Low, double High, string Unit, Evidence Evidence, string Source, string? Locator = null)
{
    /// <summary>A figure that was recalled and not checked.</summary>
    internal static SourcedFigure Recalled(string what, double value, double low, double high, string unit) => new(what, value, low, high, unit, Evidence.Memory, "recalled");

    /// <summary>A figure of common practice.</summary>
    internal static SourcedFigure Practice(string what, double value, double low, double high, string unit) => new(what, value, low, high, unit, Evidence.CommonPractice, "trade-practice");
}
