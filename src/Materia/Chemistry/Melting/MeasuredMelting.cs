using System.Globalization;
using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Melting;

/// <summary>
/// Compares measured melting figures with computed ones. The top of a measured melting range is held against the band of the
/// clear point, for the range ends where the fat is clear; a measured slip melting point against the band of the slip point, and a
/// measured clear point against that of the clear point, where a range agrees when it has a temperature in common with the band.
/// Of several statements the one that computations use is taken. A range without an upper end says nothing about the top.
/// </summary>
internal static class MeasuredMelting
{
    /// <summary>One sentence for each measured figure that lies outside the band of the computed one, with both numbers.</summary>
    public static IEnumerable<string> Disagreements(Ingredient ingredient, BlendMelting melting)
    {
        if (StoredFigures.Find(ingredient, Property.MeltingRange) is { } range && (range.High ?? range.Typical) is { } top)
        {
            foreach (var sentence in Compare("melting range ends at", range, top, top, "clear point", melting.ClearPoint))
            {
                yield return sentence;
            }
        }

        foreach (var sentence in Compare(ingredient, Property.SlipMeltingPoint, "slip melting point is", "slip point", melting.SlipPoint)
            .Concat(Compare(ingredient, Property.ClearPoint, "clear point is", "clear point", melting.ClearPoint)))
        {
            yield return sentence;
        }
    }

    private static IEnumerable<string> Compare(Ingredient ingredient, Property property, string measured, string computed, ComputedFigure? figure) =>
        StoredFigures.Find(ingredient, property) is { } stored ? Compare(measured, stored, stored.Least(), stored.Greatest(), computed, figure) : [];

    private static IEnumerable<string> Compare(string measured, Figure stored, decimal least, decimal greatest, string computed, ComputedFigure? figure)
    {
        if (figure is { Value: { } value, Low: { } low, High: { } high } && ((double)greatest < low || (double)least > high))
        {
            var number = least == greatest ? Text(least) : $"{Text(least)} to {Text(greatest)}";
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"The catalogue's {measured} {number} Cel ({stored.Source}); the computed {computed} is {value:0.0} Cel, {low:0.0} to {high:0.0}. They disagree by more than the band.");
        }
    }

    private static string Text(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
