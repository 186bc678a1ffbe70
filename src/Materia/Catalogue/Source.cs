using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>A work, or another place, that statements come from.</summary>
public sealed record Source
{
    /// <summary>The key that statements name, in kebab case.</summary>
    public required string Id { get; init; }

    /// <summary>What sort of place it is.</summary>
    public required SourceKind Kind { get; init; }

    /// <summary>Authors or the body that publishes it.</summary>
    public string? Authors { get; init; }

    /// <summary>The title.</summary>
    public required string Title { get; init; }

    /// <summary>The year of publication.</summary>
    public int? Year { get; init; }

    /// <summary>Journal, volume, pages, edition, entry or table: where the work stands and which part was used.</summary>
    public string? Locator { get; init; }

    /// <summary>The licence of data taken over from it, where it has one.</summary>
    public string? Licence { get; init; }

    /// <summary>What a reader must know to judge it, such as that only the abstract was seen.</summary>
    public string? Note { get; init; }
}

/// <summary>Sorts of source.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<SourceKind>))]
public enum SourceKind
{
    /// <summary>An article in a journal.</summary>
    Paper,

    /// <summary>A book or a chapter.</summary>
    Book,

    /// <summary>A standard, a pharmacopoeia or an industry code.</summary>
    Standard,

    /// <summary>A law or an official text.</summary>
    Law,

    /// <summary>A collection of data.</summary>
    Dataset,

    /// <summary>A report or an assessment by a public or scientific body.</summary>
    Report,

    /// <summary>A maker's or dealer's sheet.</summary>
    Supplier,

    /// <summary>A page on the web that is none of the others.</summary>
    WebPage,

    /// <summary>What people of the trade know and do, with no one source.</summary>
    TradePractice,

    /// <summary>A compiler's memory; no place at all, named so that nobody takes it for one.</summary>
    Recollection,
}
