namespace Materia.Catalogue;

/// <summary>One thing that the catalogue says, with where it comes from. Nothing is stated without a source and a grade.</summary>
public abstract record Statement
{
    /// <summary>How the statement was seen.</summary>
    public required Evidence Evidence { get; init; }

    /// <summary>The key of the <see cref="Catalogue.Source"/> in which it was seen.</summary>
    public required string Source { get; init; }

    /// <summary>Where in the source: a table, section, page or entry number. Required when the grade is <see cref="Evidence.Published"/>.</summary>
    public string? Locator { get; init; }

    /// <summary>For a recalled statement: the key of the work in which it should be looked up. It was not checked there.</summary>
    public string? CheckIn { get; init; }

    /// <summary>What a reader must know to use the statement: a method, a sample, a disagreement.</summary>
    public string? Note { get; init; }
}
