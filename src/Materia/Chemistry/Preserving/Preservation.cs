using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Chemistry.Preserving;

/// <summary>
/// Whether a formula can spoil by microbes and what in it stands against that. It says what is there and what is missing; only a
/// challenge test says whether the product is preserved.
/// </summary>
public record Preservation
{
    /// <summary>The water in the formula.</summary>
    public required FreeWater Water { get; init; }

    /// <summary>An upper estimate of the water activity [1].</summary>
    public required ComputedFigure WaterActivity { get; init; }

    /// <summary>Whether a preservative is needed.</summary>
    public required PreservationNeed Need { get; init; }

    /// <summary>Why, in a sentence.</summary>
    public required string Why { get; init; }

    /// <summary>The criteria of low microbiological risk, any of which is enough by itself.</summary>
    public required IReadOnlyList<LowRiskCriterion> Criteria { get; init; }

    /// <summary>The preservatives in it, the greatest share first.</summary>
    public required IReadOnlyList<PreservativeFinding> Preservatives { get; init; }

    /// <summary>What takes up part of the preservatives and is not computed.</summary>
    public required IReadOnlyList<string> Caveats { get; init; }

    /// <summary>Charged materials that disarm each other or a preservative.</summary>
    public required IReadOnlyList<string> Incompatibilities { get; init; }

    /// <summary>What is missing, as sentences that say what to do.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>What happens in use, as sentences.</summary>
    public required IReadOnlyList<string> InUse { get; init; }

    /// <summary>The antioxidants in it; they keep fats from rancidity and do nothing against microbes.</summary>
    public required IReadOnlyList<AntioxidantFinding> Antioxidants { get; init; }

    /// <summary>The key of the method.</summary>
    public required string Method { get; init; }

    /// <summary>How the result came about; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }
}

/// <summary>Whether a preservative is needed.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<PreservationNeed>))]
public enum PreservationNeed
{
    /// <summary>Microbes can grow in it.</summary>
    Needed,

    /// <summary>A criterion of low risk is met.</summary>
    NotNeeded,

    /// <summary>Nobody says how much water is in it.</summary>
    Unknown,
}

/// <summary>One criterion of low microbiological risk.</summary>
/// <param name="Criterion">What must hold.</param>
/// <param name="Met">Whether it holds; absent where the formula does not tell.</param>
/// <param name="Found">What was found.</param>
/// <param name="Source">The key of the source in which the criterion was seen.</param>
/// <param name="Evidence">How it was seen.</param>
public sealed record LowRiskCriterion(string Criterion, bool? Met, string Found, string Source, Evidence Evidence);

/// <summary>An antioxidant in the formula.</summary>
/// <param name="Ingredient">The component that brings it.</param>
/// <param name="Name">What it is.</param>
/// <param name="Percent">Its share of the formula as sold [%].</param>
/// <param name="InFats">Its share of the lipids as sold [mg/kg]; absent without lipids.</param>
/// <param name="Note">What to know of the level.</param>
public sealed record AntioxidantFinding(string Ingredient, string Name, decimal Percent, decimal? InFats, string Note);
