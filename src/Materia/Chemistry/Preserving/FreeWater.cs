using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Preserving;

/// <summary>The water in a formula: added, and brought by hydrosols, honey, gels, solutions and the like.</summary>
public sealed record FreeWater
{
    /// <summary>The key of the method.</summary>
    public const string MethodKey = "free-water";

    /// <summary>Below this a formula counts as free of water [%].</summary>
    public const decimal AnhydrousBelow = 0.5m;

    /// <summary>The share of the formula [%].</summary>
    public required ShareRange Percent { get; init; }

    /// <summary>Whether the formula is free of water; absent where that cannot be told.</summary>
    public bool? Anhydrous { get; init; }

    /// <summary>What brings water, the most first.</summary>
    public required IReadOnlyList<WaterSource> Sources { get; init; }

    /// <summary>Materials that may hold water and of which nothing says how much.</summary>
    public required IReadOnlyList<string> Unknown { get; init; }

    internal IReadOnlyList<UsedFigure> Cited { get; init; } = [];

    internal static FreeWater Of(IReadOnlyList<FormulaPart> parts)
    {
        var sources = new List<WaterSource>();
        var unknown = new List<string>();
        var cited = new List<UsedFigure>();
        var sum = ShareRange.None;
        foreach (var part in parts)
        {
            var water = WaterOfMaterial.Of(part);
            if (water.Range.High == 0)
            {
                continue;
            }

            var brought = new ShareRange(
                part.Share.Low * water.Range.Low / 100, part.Share.Typical * water.Range.Typical / 100, part.Share.High * water.Range.High / 100);
            sum += brought;
            sources.Add(new WaterSource(part.Component, part.Part.Name, brought.Trimmed(), water.Basis));
            if (!water.IsKnown && !unknown.Contains(part.Component))
            {
                unknown.Add(part.Component);
            }

            if (water.Stored is { } figure)
            {
                cited.Add(StoredFigures.Cite(part.Component, figure));
            }
        }

        return new FreeWater
        {
            Percent = sum.Trimmed(),
            Anhydrous = sum.High < AnhydrousBelow ? true : sum.Low >= AnhydrousBelow ? false : null,
            Sources = [.. sources.OrderByDescending(s => s.Percent.High)],
            Unknown = unknown,
            Cited = cited,
        };
    }
}

/// <summary>A material that brings water.</summary>
/// <param name="Ingredient">The component of the formula.</param>
/// <param name="Part">The part of it that holds the water; the same material where it has no parts.</param>
/// <param name="Percent">The water that it brings to the formula [%].</param>
/// <param name="Basis">What that rests on.</param>
public sealed record WaterSource(string Ingredient, string Part, ShareRange Percent, string Basis);
