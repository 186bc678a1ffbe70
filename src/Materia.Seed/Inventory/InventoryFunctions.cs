namespace Materia.Seed.Inventory;

/// <summary>Reads the functions of a cell: the official terms, parted by commas or semicolons.</summary>
internal static class InventoryFunctions
{
    private const string NotReported = "not-reported";

    /// <summary>The functions in kebab case, each once; a function that the inventory itself calls not reported is none.</summary>
    public static IReadOnlyList<string> Of(string cell) =>
        [.. cell.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(Kebab)
            .Where(f => f.Length > 0 && f != NotReported)
            .Distinct(StringComparer.Ordinal)];

    private static string Kebab(string term) =>
        string.Join('-', string.Concat(term.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
