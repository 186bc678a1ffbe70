namespace Materia.Catalogue;

/// <summary>A grade of the rabbit-ear assay, from 0 (none seen) to 5.</summary>
public sealed record ComedogenicNote : Statement
{
    /// <summary>
    /// What must stand beside every grade. Sources: Kligman 1996 and Draelos and DiNardo 2006 (keys in <see cref="CaveatSources"/>).
    /// </summary>
    public const string Caveat =
        "Graded on rabbit ears, which react more strongly than human skin; laboratories differ widely, and the grade of an ingredient does not predict a finished product.";

    /// <summary>The keys of the sources of <see cref="Caveat"/>.</summary>
    public static IReadOnlyList<string> CaveatSources { get; } = ["kligman-1996", "draelos-dinardo-2006"];

    /// <summary>The lower grade.</summary>
    public required int Low { get; init; }

    /// <summary>The higher grade; the same as <see cref="Low"/> for a single grade.</summary>
    public required int High { get; init; }

    /// <summary>The grade of irritancy from the same test, 0 to 5, where it was given.</summary>
    public int? Irritancy { get; init; }

    /// <summary>The material as the study names it.</summary>
    public required string Tested { get; init; }
}
