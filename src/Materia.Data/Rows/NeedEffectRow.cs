using Materia.Catalogue.Needs;

namespace Materia.Data.Rows;

/// <summary>What follows from a need.</summary>
internal sealed class NeedEffectRow : StatementRow
{
    public NeedEffectRow(int release, int ordinal, string need, NeedEffect effect)
        : base(release, ordinal, effect)
    {
        Need = need;
        Kind = effect.Kind;
        AimedProperty = effect.Property;
        Temperature = effect.Temperature;
        Acid = effect.Acid;
        Low = effect.Low;
        High = effect.High;
        Weight = effect.Weight;
        Scope = effect.Scope;
        Reason = effect.Reason;
    }

    /// <summary>For the reader of the database.</summary>
    private NeedEffectRow()
    {
    }

    /// <summary>The key of the need.</summary>
    public string Need { get; private init; } = "";

    /// <inheritdoc cref="NeedEffect.Kind"/>
    public NeedEffectKind Kind { get; private init; }

    /// <inheritdoc cref="NeedEffect.Property"/>
    public TargetProperty? AimedProperty { get; private init; }

    /// <inheritdoc cref="NeedEffect.Temperature"/>
    public decimal? Temperature { get; private init; }

    /// <inheritdoc cref="NeedEffect.Acid"/>
    public string? Acid { get; private init; }

    /// <inheritdoc cref="NeedEffect.Low"/>
    public decimal? Low { get; private init; }

    /// <inheritdoc cref="NeedEffect.High"/>
    public decimal? High { get; private init; }

    /// <inheritdoc cref="NeedEffect.Weight"/>
    public decimal? Weight { get; private init; }

    /// <inheritdoc cref="NeedEffect.Scope"/>
    public string? Scope { get; private init; }

    /// <inheritdoc cref="NeedEffect.Reason"/>
    public string Reason { get; private init; } = "";

    /// <summary>The catalogue's record of this row.</summary>
    public NeedEffect ToRecord() => new()
    {
        Kind = Kind,
        Property = AimedProperty,
        Temperature = Temperature,
        Acid = Acid,
        Low = Low,
        High = High,
        Weight = Weight,
        Scope = Scope,
        Reason = Reason,
        Evidence = Evidence,
        Source = Source,
        Locator = Locator,
        CheckIn = CheckIn,
        Note = Note,
    };
}
