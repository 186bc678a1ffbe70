using Materia.Catalogue;

namespace Materia.Api.Ingredients;

/// <summary>A grade of the rabbit-ear assay together with what must be said beside it.</summary>
public sealed record ComedogenicGrade : Statement
{
    /// <summary>The lower grade, 0 (none seen) to 5.</summary>
    public required int Low { get; init; }

    /// <summary>The higher grade; the same as the lower for a single grade.</summary>
    public required int High { get; init; }

    /// <summary>The grade of irritancy from the same test, 0 to 5, where it was given.</summary>
    public int? Irritancy { get; init; }

    /// <summary>The material as the study names it.</summary>
    public required string Tested { get; init; }

    /// <summary>What the grade does not mean.</summary>
    public required string Caveat { get; init; }

    /// <summary>The keys of the sources of the caveat.</summary>
    public required IReadOnlyList<string> CaveatSources { get; init; }

    /// <summary>Puts the caveat beside <paramref name="note"/>.</summary>
    public static ComedogenicGrade Of(ComedogenicNote note) => new()
    {
        Low = note.Low,
        High = note.High,
        Irritancy = note.Irritancy,
        Tested = note.Tested,
        Caveat = ComedogenicNote.Caveat,
        CaveatSources = ComedogenicNote.CaveatSources,
        Evidence = note.Evidence,
        Source = note.Source,
        Locator = note.Locator,
        CheckIn = note.CheckIn,
        Note = note.Note,
    };
}
