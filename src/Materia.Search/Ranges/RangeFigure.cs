using Materia.Catalogue;

namespace Materia.Search.Ranges;

/// <summary>A stored or computed figure as ranges are compared with it.</summary>
/// <param name="Property">The property; <see langword="null"/> for a comedogenic grade, which is no property, and for a computed figure.</param>
/// <param name="Low">The lower end; <see langword="null"/> where the statement has none.</param>
/// <param name="High">The upper end; <see langword="null"/> where the statement has none.</param>
/// <param name="Unit">The UCUM code of the unit.</param>
/// <param name="Temperature">The temperature of the material [Cel], where it is stated.</param>
/// <param name="Central">The value to sort by.</param>
internal sealed record RangeFigure(Property? Property, decimal? Low, decimal? High, string Unit, decimal? Temperature, decimal Central)
{
    /// <summary>The key of the method of a computed figure; <see langword="null"/> for a stored one.</summary>
    public string? Method { get; init; }

    /// <summary>The range of a statement: its ends, its typical value standing in for an end that is missing.</summary>
    public static RangeFigure Of(Figure figure) =>
        new(figure.Property, figure.Low ?? figure.Typical, figure.High ?? figure.Typical, figure.Unit, figure.At?.Temperature, figure.Central());
}
