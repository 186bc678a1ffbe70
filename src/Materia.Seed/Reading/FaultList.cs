namespace Materia.Seed.Reading;

/// <summary>Collects the faults of one reading.</summary>
internal sealed class FaultList
{
    private readonly List<SeedFault> faults = [];

    /// <summary>True while nothing is wrong.</summary>
    public bool IsEmpty => faults.Count == 0;

    /// <summary>Adds a fault at a place.</summary>
    public void Add(Place place, string message) => Add(place.File.Path, place.Line, message);

    /// <summary>Adds a fault of a file at a line, or of the file as a whole.</summary>
    public void Add(string file, int? line, string message) => faults.Add(new SeedFault(file, line, message));

    /// <summary>The faults by file, line and message.</summary>
    public IReadOnlyList<SeedFault> Sorted() =>
    [
        .. faults
            .OrderBy(f => f.File, StringComparer.Ordinal)
            .ThenBy(f => f.Line ?? 0)
            .ThenBy(f => f.Message, StringComparer.Ordinal),
    ];
}
