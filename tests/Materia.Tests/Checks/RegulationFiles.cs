using System.Globalization;

namespace Materia.Tests.Checks;

/// <summary>The figures of instruments to check the tables of limits and allergens against, and which of them are left out and why.</summary>
internal static class RegulationFiles
{
    private static readonly Lazy<ILookup<(string File, int Line), LeftOut>> Loaded = new(() => CheckFiles
        .Read("regulation/left-out.csv", r => new LeftOut(r["file"], int.Parse(r["line"], CultureInfo.InvariantCulture), r["what"], r["cas"], r["reason"]))
        .ToLookup(l => (l.File, l.Line)));

    /// <summary>The rows and numbers that the tables leave out, by file and line.</summary>
    public static ILookup<(string File, int Line), LeftOut> LeftOut => Loaded.Value;

    /// <summary>The rows of a file; the header is line 1.</summary>
    public static List<RegulationRow> Rows(string file)
    {
        var line = 1;
        return CheckFiles.Read("regulation/" + file, r => new RegulationRow(file, ++line, r));
    }
}

/// <summary>A row or a CAS number of a row that the tables leave out.</summary>
internal sealed record LeftOut(string File, int Line, string What, string Cas, string Reason);

/// <summary>A row of a file of figures.</summary>
internal sealed record RegulationRow(string File, int Line, IReadOnlyDictionary<string, string> Fields)
{
    public string this[string column] => Fields[column];

    /// <summary>Whether the whole row is left out, with a reason.</summary>
    public bool IsLeftOut => RegulationFiles.LeftOut[(File, Line)].Any(l => l.Cas.Length == 0);

    /// <summary>Whether one of its numbers is left out, with a reason.</summary>
    public bool LeavesOut(string cas) => RegulationFiles.LeftOut[(File, Line)].Any(l => l.Cas == cas);

    /// <summary>A figure, or <see langword="null"/> where the field is empty or holds words.</summary>
    public decimal? Figure(string column) =>
        decimal.TryParse(Fields[column], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;

    /// <summary>The CAS numbers of a field that may hold several, with words between.</summary>
    public IReadOnlyList<string> CasNumbers() =>
        [.. System.Text.RegularExpressions.Regex.Matches(Fields["cas"], @"\b\d{2,7}-\d{2}-\d\b").Select(m => m.Value)];

    public override string ToString() => FormattableString.Invariant($"{File}:{Line}");
}
