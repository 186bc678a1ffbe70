using System.Globalization;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>The low, typical and high value of one statement.</summary>
internal readonly record struct RangeOrder(decimal? Low, decimal? Typical, decimal? High)
{
    /// <summary>True when there is no value at all.</summary>
    public bool IsEmpty => Low is null && Typical is null && High is null;

    /// <summary>Adds a fault when there is no value at all, when the values do not rise, or when one lies outside a band.</summary>
    /// <param name="least">The least value that may stand.</param>
    /// <param name="greatest">The greatest value that may stand.</param>
    /// <param name="why">Why, as the end of a sentence.</param>
    /// <param name="at">The statement.</param>
    /// <param name="faults">Receives the faults.</param>
    public void Check(decimal least, decimal greatest, string why, Place at, FaultList faults)
    {
        if (IsEmpty)
        {
            faults.Add(at, "neither low nor typical nor high; give a value or remove the statement: what is not known is left out");
        }

        if (Low > Typical || Typical > High || Low > High)
        {
            faults.Add(at, $"low {Text(Low)}, typical {Text(Typical)}, high {Text(High)} do not rise; put them in order");
        }

        foreach (var value in new[] { Low, Typical, High })
        {
            if (value < least || value > greatest)
            {
                faults.Add(at, $"{Text(value)} is outside {Text(least)} to {Text(greatest)}, {why}; check the figure and its unit");
            }
        }
    }

    /// <summary>Adds the faults of a share in percent.</summary>
    public void CheckPercent(Place at, FaultList faults) => Check(0, 100, "the bounds of a percentage", at, faults);

    private static string Text(decimal? value) => value?.ToString(CultureInfo.InvariantCulture) ?? "absent";
}
