using System.Collections.Frozen;

namespace Materia.Formulation.Costs;

/// <summary>A unit of volume that liquids are sold in.</summary>
/// <param name="Word">What is written in a price.</param>
/// <param name="Millilitres">Millilitres in one unit.</param>
public sealed record VolumeUnit(string Word, decimal Millilitres)
{
    // The American fluid ounce is 1/128 of 231 cubic inches, the British one 1/160 of 4.54609 L; both exact.
    private static readonly FrozenDictionary<string, VolumeUnit> ByWord = new VolumeUnit[]
    {
        new("mL", 1m), new("ml", 1m), new("cL", 10m), new("L", 1000m), new("l", 1000m), new("[foz_us]", 29.5735295625m), new("[foz_br]", 28.4130625m),
    }.ToFrozenDictionary(u => u.Word, StringComparer.Ordinal);

    /// <summary>The unit written <paramref name="word"/>, or <see langword="null"/>.</summary>
    public static VolumeUnit? Find(string word) => ByWord.GetValueOrDefault(word);

    /// <summary>What to say of a word that is no unit of volume.</summary>
    internal static string Refusal(string word) => word.Contains("oz", StringComparison.OrdinalIgnoreCase)
        ? $"Fluid ounces differ: write \"[foz_us]\" for the American (29.57 mL) or \"[foz_br]\" for the British one (28.41 mL). For ounces of weight give \"mass\" in place of \"volume\"."
        : MassUnit.Find(word) is not null
            ? $"\"{word}\" measures mass. Give \"mass\" in place of \"volume\", or a unit of volume: mL or L."
            : $"\"{Fault.Shorten(word)}\" is not a unit of volume that is known here. Use mL, L, [foz_us] or [foz_br].";
}
