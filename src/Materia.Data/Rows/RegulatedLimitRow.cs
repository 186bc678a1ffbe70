using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Data.Rows;

/// <summary>A limit; its members and the lists of its scope are rows of their own. Columns keep clear of words that SQL reserves.</summary>
internal sealed class RegulatedLimitRow : StatementRow
{
    public RegulatedLimitRow(int release, int ordinal, Limit limit)
        : base(release, ordinal, limit)
    {
        Id = limit.Id;
        Substance = limit.Substance;
        Authority = limit.Authority;
        Kind = limit.Kind;
        Exposure = limit.Scope.Exposure;
        ScopeText = limit.ScopeText;
        MaxPercent = limit.MaxPercent;
        StaysBelow = limit.Below;
        ExpressedAs = limit.ExpressedAs;
        RatioGroup = limit.RatioGroup;
        Conditions = limit.Conditions;
        Warning = limit.Warning;
        WarningAbove = limit.WarningAbove;
        AppliesFrom = limit.From;
        OldStockUntil = limit.OldStockUntil;
    }

    /// <summary>For the reader of the database.</summary>
    private RegulatedLimitRow()
    {
    }

    /// <inheritdoc cref="Limit.Id"/>
    public string Id { get; private init; } = "";

    /// <inheritdoc cref="Limit.Substance"/>
    public string Substance { get; private init; } = "";

    /// <inheritdoc cref="Limit.Authority"/>
    public Authority Authority { get; private init; }

    /// <inheritdoc cref="Limit.Kind"/>
    public LimitKind Kind { get; private init; }

    /// <inheritdoc cref="ProductScope.Exposure"/>
    public Exposure? Exposure { get; private init; }

    /// <inheritdoc cref="Limit.ScopeText"/>
    public string ScopeText { get; private init; } = "";

    /// <inheritdoc cref="Limit.MaxPercent"/>
    public decimal? MaxPercent { get; private init; }

    /// <inheritdoc cref="Limit.Below"/>
    public bool StaysBelow { get; private init; }

    /// <inheritdoc cref="Limit.ExpressedAs"/>
    public string? ExpressedAs { get; private init; }

    /// <inheritdoc cref="Limit.RatioGroup"/>
    public string? RatioGroup { get; private init; }

    /// <inheritdoc cref="Limit.Conditions"/>
    public string? Conditions { get; private init; }

    /// <inheritdoc cref="Limit.Warning"/>
    public string? Warning { get; private init; }

    /// <inheritdoc cref="Limit.WarningAbove"/>
    public decimal? WarningAbove { get; private init; }

    /// <inheritdoc cref="Limit.From"/>
    public DateOnly? AppliesFrom { get; private init; }

    /// <inheritdoc cref="Limit.OldStockUntil"/>
    public DateOnly? OldStockUntil { get; private init; }

    /// <summary>The catalogue's record of this row and the rows that belong to it.</summary>
    public Limit ToRecord(IReadOnlyList<RegulatedMember> members, ProductScope scope, IReadOnlyList<string> exceptIngredients) => new()
    {
        Id = Id,
        Substance = Substance,
        Authority = Authority,
        Kind = Kind,
        Members = members,
        ExceptIngredients = exceptIngredients,
        Scope = scope,
        ScopeText = ScopeText,
        MaxPercent = MaxPercent,
        Below = StaysBelow,
        ExpressedAs = ExpressedAs,
        RatioGroup = RatioGroup,
        Conditions = Conditions,
        Warning = Warning,
        WarningAbove = WarningAbove,
        From = AppliesFrom,
        OldStockUntil = OldStockUntil,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
