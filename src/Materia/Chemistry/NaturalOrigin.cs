using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry;

/// <summary>The natural origin content of a formula by ISO 16128, with and without formulation water. It is no approval of a claim.</summary>
public sealed record NaturalOrigin
{
    /// <summary>The key of the method.</summary>
    public const string MethodKey = "natural-origin-content";

    // With more than this unknown no value is given.
    private const decimal MostUnknown = 5;

    /// <summary>The content with formulation water [%].</summary>
    public required ComputedFigure WithWater { get; init; }

    /// <summary>The content without formulation water [%].</summary>
    public required ComputedFigure WithoutWater { get; init; }

    /// <summary>The water that was added as such [%].</summary>
    public required decimal FormulationWater { get; init; }

    /// <summary>What brings less than natural origin in whole, or has no index, the greatest share first.</summary>
    public required IReadOnlyList<OriginShare> NotWhollyNatural { get; init; }

    /// <summary>Works it out.</summary>
    public static NaturalOrigin Of(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        var shares = blend.Components.Where(c => c.MassFraction > 0).SelectMany(c => Shares(c, blend)).ToList();
        var water = shares.Where(s => s.IsFormulationWater).Sum(s => s.Percent);
        return new NaturalOrigin
        {
            WithWater = Content(shares, blend.Explain),
            WithoutWater = Content([.. shares.Where(s => !s.IsFormulationWater)], blend.Explain),
            FormulationWater = ExactShare.Trim(water),
            NotWhollyNatural = [.. shares.Where(s => s.Index is null or < 1).OrderByDescending(s => s.Percent)
                .Select(s => new OriginShare(s.Component, s.Name, ExactShare.Trim(s.Percent), s.Index, s.Figure?.Source, s.Figure?.Evidence))],
        };
    }

    private static ComputedFigure Content(IReadOnlyList<Share> shares, bool explain)
    {
        var mass = shares.Sum(s => s.Percent);
        var known = shares.Where(s => s.Index is not null).ToList();
        var natural = known.Sum(s => s.Percent * s.Index!.Value);
        var unknown = mass - known.Sum(s => s.Percent);
        var figure = new ComputedFigure { Unit = Units.Percent, Method = MethodKey, Coverage = mass == 0 ? 0 : Math.Round((double)((mass - unknown) / mass), 6) };
        if (mass == 0)
        {
            return figure with { Absent = "There is nothing but water in the formula." };
        }

        var lacking = Written.List([.. shares.Where(s => s.Index is null).Select(s => s.Name).Distinct(StringComparer.Ordinal)]);
        var (low, high) = ((double)(100 * natural / mass), (double)(100 * (natural + unknown) / mass));
        var tooLittle = 100 * unknown / mass > MostUnknown;
        return figure with
        {
            Value = tooLittle ? null : low,
            Low = low,
            High = high,
            Absent = tooLittle ? $"No index is held for {lacking}, more than a twentieth of the mass. Ask the suppliers, and give it as naturalOriginIndex of an own material. The bounds take it as 0 and as 1." : null,
            Warnings = unknown > 0 && !tooLittle ? [$"No index is held for {lacking}; it counts as 0."] : [],
            Steps = explain ? [Step(known, natural, mass)] : null,
        };
    }

    private static ExplainedStep Step(IReadOnlyList<Share> known, decimal natural, decimal mass) => new()
    {
        What = "Natural origin content",
        Equation = "content = 100 Σ w NOI / Σ w",
        Arithmetic = $"({string.Join(" + ", known.Select(s => $"{Written.Number((double)s.Percent)} × {Written.Number((double)s.Index!.Value)}"))}) / {Written.Number((double)mass)} × 100 = {Written.Number((double)(100 * natural / mass))} %",
        Inputs = [.. known.Where(s => s.Figure is not null).Select(s => StoredFigures.Cite(s.Component, s.Figure!))],
    };

    private static IEnumerable<Share> Shares(BlendComponent component, Blend blend)
    {
        var percent = (decimal)(component.MassFraction / blend.TotalMass) * 100;
        var parts = MaterialPartShare.Of(component.Ingredient, blend.Release);
        if (component.Ingredient.Parts.Count > 0 && StoredFigures.Find(component.Ingredient, Property.NaturalOriginIndex) is { } own)
        {
            return [new Share(component.Name, component.Ingredient.CommonName(), percent, own.Central(), own, false)];
        }

        // Parts are brought to the whole, so that a mixture weighs no more and no less than what was weighed in.
        var sum = parts.Sum(p => p.Typical);
        return parts.Select(p =>
        {
            var figure = p.Ingredient is { } record ? StoredFigures.Find(record, Property.NaturalOriginIndex) : null;
            var share = sum == 0 ? percent / parts.Count : percent * p.Typical / sum;
            return new Share(component.Name, p.Name, share, p.IsWater ? 1 : figure?.Central(), p.IsWater ? null : figure, p.IsWater && component.Ingredient.Parts.Count == 0);
        });
    }

    private sealed record Share(string Component, string Name, decimal Percent, decimal? Index, Figure? Figure, bool IsFormulationWater);
}

/// <summary>A material that is not wholly of natural origin, or of which that is not known.</summary>
/// <param name="Ingredient">The component that brings it.</param>
/// <param name="Name">What it is.</param>
/// <param name="Percent">Its share of the formula [%].</param>
/// <param name="Index">Its natural origin index, 0 to 1; absent where none is held.</param>
/// <param name="Source">The key of the source of the index.</param>
/// <param name="Evidence">How the index was seen.</param>
public sealed record OriginShare(string Ingredient, string Name, decimal Percent, decimal? Index, string? Source, Evidence? Evidence);
