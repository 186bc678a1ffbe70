using System.Collections.Frozen;

namespace Materia.Formulation;

/// <summary>A unit of mass that makers weigh in.</summary>
/// <param name="Word">What is written in a formula, such as <c>oz</c>.</param>
/// <param name="Ucum">The UCUM code that results carry, such as <c>[oz_av]</c>.</param>
/// <param name="Grams">Grams in one unit; the avoirdupois pound is 453.59237 g by definition (International Yard and Pound, 1959), the ounce a sixteenth of it.</param>
/// <param name="UsualStep">The step of a usual kitchen scale that shows this unit: 0.1 g, or the like.</param>
public sealed record MassUnit(string Word, string Ucum, decimal Grams, decimal UsualStep)
{
    /// <summary>The gram.</summary>
    public static MassUnit Gram { get; } = new("g", "g", 1m, 0.1m);

    /// <summary>All units, the usual one first.</summary>
    public static IReadOnlyList<MassUnit> All { get; } =
    [
        Gram,
        new("kg", "kg", 1000m, 0.0001m),
        new("mg", "mg", 0.001m, 100m),
        new("oz", "[oz_av]", 28.349523125m, 0.005m),
        new("lb", "[lb_av]", 453.59237m, 0.0005m),
    ];

    private static readonly FrozenDictionary<string, MassUnit> ByWord =
        All.SelectMany(u => new[] { (u.Word, u), (u.Ucum, u) }).DistinctBy(p => p.Item1).ToFrozenDictionary(p => p.Item1, p => p.u, StringComparer.Ordinal);

    private static readonly FrozenSet<string> Volumes =
        FrozenSet.Create(StringComparer.OrdinalIgnoreCase, "ml", "l", "cl", "dl", "fl oz", "floz", "tsp", "tbsp", "cup", "drop", "drops", "cc", "litre", "liter");

    /// <summary>The unit written <paramref name="word"/>, or <see langword="null"/>.</summary>
    public static MassUnit? Find(string word) => ByWord.GetValueOrDefault(word);

    /// <summary>What to say of a word that is no unit of mass.</summary>
    internal static string Refusal(string word) => Volumes.Contains(word.Trim())
        ? $"\"{word}\" measures volume, and a volume of one material weighs more than of another. Weigh it and give g, kg, mg, oz or lb."
        : $"\"{Fault.Shorten(word)}\" is not a unit of mass that is known here. Use g, kg, mg, oz or lb.";
}
