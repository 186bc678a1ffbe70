using System.Text.RegularExpressions;
using Materia.Catalogue;

namespace Materia.Seed.Inventory;

/// <summary>Takes the registry numbers out of a cell that may hold several, parted in any way and with remarks between.</summary>
internal static partial class InventoryNumbers
{
    /// <summary>The CAS numbers of a cell.</summary>
    public static IReadOnlyList<string> Cas(string cell, Action<string> fault) => Numbers(cell, CasForm(), CasNumber.IsValid, "CAS", fault);

    /// <summary>The EC numbers of a cell.</summary>
    public static IReadOnlyList<string> Ec(string cell, Action<string> fault) => Numbers(cell, EcForm(), EcNumber.IsValid, "EC", fault);

    private static List<string> Numbers(string cell, Regex form, Func<string?, bool> isValid, string registry, Action<string> fault)
    {
        var numbers = new List<string>();
        foreach (var match in form.EnumerateMatches(cell))
        {
            var number = cell.Substring(match.Index, match.Length);
            if (!isValid(number))
            {
                fault($"the check digit of {registry} number {number} is wrong; the number was left out");
            }
            else if (!numbers.Contains(number, StringComparer.Ordinal))
            {
                numbers.Add(number);
            }
        }

        if (numbers.Count == 0 && !form.IsMatch(cell) && cell.Any(char.IsAsciiDigit))
        {
            fault($"'{cell}' holds no {registry} number; the cell was left out");
        }

        return numbers;
    }

    [GeneratedRegex(@"(?<![0-9-])[1-9][0-9]{1,6}-[0-9]{2}-[0-9](?![0-9-])", RegexOptions.CultureInvariant)]
    private static partial Regex CasForm();

    [GeneratedRegex(@"(?<![0-9-])[0-9]{3}-[0-9]{3}-[0-9](?![0-9-])", RegexOptions.CultureInvariant)]
    private static partial Regex EcForm();
}
