using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using Materia.Catalogue.Regulated;
using Materia.Chemistry.Preserving;
using Materia.Regulation.Limits;

namespace Materia.Formulation.Sections;

/// <summary>Preservation with the market's limits on the preservatives.</summary>
public sealed record ProductPreservation : Preservation
{
    [SetsRequiredMembers]
    private ProductPreservation(Preservation preservation, IReadOnlyList<PreservativeLimit> limits)
        : base(preservation) => Limits = limits;

    /// <summary>How the preservatives stand to the market's limits on them; the section <c>limits</c> has the whole of each.</summary>
    [JsonPropertyOrder(1)]
    public required IReadOnlyList<PreservativeLimit> Limits { get; init; }

    internal static ProductPreservation Of(EvaluationInput input)
    {
        var authorities = MarketRules.Of(input.Formula.Market);
        var listed = input.Release.Content.Limits.Where(l => l.Kind == LimitKind.Preservative && authorities.Contains(l.Authority)).ToList();
        return new ProductPreservation(
            FormulaPreservation.Of(input.Blend, input.Formula.Ph, input.Formula.Use, listed),
            [.. input.Of(RegulationSections.Limits).Where(f => f.Kind == LimitKind.Preservative).Select(f => new PreservativeLimit(
                f.Id, f.Substance, f.Status, f.Amount.High, f.Limit, f.ExpressedAs, [.. f.Contributions.Select(c => c.Ingredient)]))]);
    }
}

/// <summary>How a preservative stands to a limit.</summary>
/// <param name="Id">The key of the limit.</param>
/// <param name="Substance">The substance as the instrument names it.</param>
/// <param name="Status">How it stands.</param>
/// <param name="Amount">The greatest share that counts [%].</param>
/// <param name="Limit">The limit [%].</param>
/// <param name="ExpressedAs">What the share is counted as, where not as the substance itself.</param>
/// <param name="Ingredients">What brings it.</param>
public sealed record PreservativeLimit(string Id, string Substance, LimitStatus Status, decimal Amount, decimal? Limit, string? ExpressedAs, IReadOnlyList<string> Ingredients);
