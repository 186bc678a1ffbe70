using Materia.Catalogue;

namespace Materia.Regulation.Cautioning;

/// <summary>A caution that a formula calls for.</summary>
public sealed record CautionFinding
{
    /// <summary>The method's key.</summary>
    public const string MethodKey = "caution-rules";

    /// <summary>What may go wrong, in a few words.</summary>
    public required string Hazard { get; init; }

    /// <summary>Whom it concerns.</summary>
    public required string Who { get; init; }

    /// <summary>When it concerns them.</summary>
    public required string When { get; init; }

    /// <summary>What to do, as sentences.</summary>
    public required string WhatToDo { get; init; }

    /// <summary>The materials that call for it; empty for a caution on the product as a whole.</summary>
    public required IReadOnlyList<string> Ingredients { get; init; }

    /// <summary>The key of the source; <c>recalled</c> where nobody looked it up.</summary>
    public required string Source { get; init; }

    /// <summary>Where in the source.</summary>
    public string? Locator { get; init; }

    /// <summary>For a recalled caution: the key of the work in which it should be looked up.</summary>
    public string? CheckIn { get; init; }

    /// <summary>How it was seen.</summary>
    public required Evidence Evidence { get; init; }
}
