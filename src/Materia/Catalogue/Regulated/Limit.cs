namespace Materia.Catalogue.Regulated;

/// <summary>One limit of one instrument for one scope of products; the statement's source is the instrument, its locator the entry.</summary>
public sealed record Limit : Statement
{
    /// <summary>The key, such as <c>eu-iii-98-rinse-off-hair</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The substance or group as the instrument names it.</summary>
    public required string Substance { get; init; }

    /// <summary>Who sets it.</summary>
    public required Authority Authority { get; init; }

    /// <summary>What it is about.</summary>
    public required LimitKind Kind { get; init; }

    /// <summary>What counts towards it; the shares of all members are added, each times its factor.</summary>
    public required IReadOnlyList<RegulatedMember> Members { get; init; }

    /// <summary>Ids of catalogue ingredients that carry a member's number or name and yet are not meant, such as an oil freed of furocoumarins.</summary>
    public IReadOnlyList<string> ExceptIngredients { get; init; } = [];

    /// <summary>The products that it binds.</summary>
    public required ProductScope Scope { get; init; }

    /// <summary>The scope as the instrument words it, in short.</summary>
    public required string ScopeText { get; init; }

    /// <summary>The greatest share in the finished product [%]; absent where the instrument gives none, such as a ban or a condition.</summary>
    public decimal? MaxPercent { get; init; }

    /// <summary>True where the share must stay below the limit; false where it may equal it.</summary>
    public bool Below { get; init; }

    /// <summary>What the share is counted as, such as <c>acid</c>; absent for the substance itself.</summary>
    public string? ExpressedAs { get; init; }

    /// <summary>Limits of the same group add up as ratios of share to limit, which together must not pass 1.</summary>
    public string? RatioGroup { get; init; }

    /// <summary>Conditions that a share cannot show, such as a peroxide value or an age.</summary>
    public string? Conditions { get; init; }

    /// <summary>Words that must stand on the label.</summary>
    public string? Warning { get; init; }

    /// <summary>The share above which the words must stand [%]; absent where any share needs them.</summary>
    public decimal? WarningAbove { get; init; }

    /// <summary>The day from which new products must comply.</summary>
    public DateOnly? From { get; init; }

    /// <summary>The last day on which products made before may still be made available.</summary>
    public DateOnly? OldStockUntil { get; init; }
}
