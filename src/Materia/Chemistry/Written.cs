using System.Globalization;

namespace Materia.Chemistry;

/// <summary>Numbers as sentences and arithmetic write them: four or five significant digits, a point, no thousands mark.</summary>
internal static class Written
{
    /// <summary>A number with up to five significant digits.</summary>
    public static string Number(double value) => value.ToString("G5", CultureInfo.InvariantCulture);

    /// <summary>A share from 0 to 1 as a percentage with its sign.</summary>
    public static string Percent(double share) => (100 * share).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    /// <summary>Names in a row, the last joined by "and".</summary>
    public static string List(IReadOnlyList<string> names) => names.Count switch
    {
        0 => "",
        1 => names[0],
        _ => string.Join(", ", names.Take(names.Count - 1)) + " and " + names[^1],
    };
}
