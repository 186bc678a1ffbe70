using System.Globalization;

namespace Materia.Formulation.Substituting;

/// <summary>Says in plain sentences what a user will notice.</summary>
internal static class Notices
{
    private const int Most = 2;

    private static readonly (string Property, string Up, string Down)[] Words =
    [
        ("solid-content at 20 Cel", "firmer in the jar at room temperature", "softer in the jar at room temperature"),
        ("solid-content at 25 Cel", "firmer in a warm room", "softer in a warm room"),
        ("solid-content at 10 Cel", "harder out of the cold", "softer out of the cold"),
        ("solid-content at 32 Cel", "slower to melt on the skin", "quicker to melt on the skin"),
        ("solid-content at 40 Cel", "still holding solid fat above skin temperature", "more wholly melted in the heat"),
        ("clear-point", "clear only at a higher temperature, so it must be heated further and may feel waxier", "clear at a lower temperature, so it stands less heat"),
        ("viscosity at 32 Cel", "thicker on the skin", "thinner on the skin"),
        ("viscosity at 60 Cel", "thicker when melted", "thinner when melted"),
        ("oxidisability", "quicker to go rancid: use fresh oils and an antioxidant", "slower to go rancid"),
        ("oil-absorption", "drier, since its powders take up more oil", "oilier, since its powders take up less oil"),
        ("water-absorption", "in need of more water to spread", "in need of less water to spread"),
        ("swelling-volume", "swelling more in water", "swelling less in water"),
        ("cation-exchange-capacity", "quicker to bind cationic conditioners", "slower to bind cationic conditioners"),
        ("hlb", "emulsified by something more water-loving: test the emulsion for stability", "emulsified by something more oil-loving: test the emulsion for stability"),
        ("density at 25 Cel", "a little heavier in the jar", "a little lighter in the jar"),
    ];

    /// <summary>One or two sentences on the largest differences that are felt; a step is what a user is likely to notice.</summary>
    public static string Of(IReadOnlyList<FigureDifference> differences)
    {
        var felt = differences
            .Select(d => (Difference: d, Word: Words.FirstOrDefault(w => w.Property == d.Property)))
            .Where(p => p.Word.Property is not null)
            .ToList();
        var lost = felt.Where(p => p.Difference.After is null).Select(p => p.Difference.Property).ToList();
        var large = felt.Where(p => p.Difference.Steps >= 1).OrderByDescending(p => p.Difference.Steps).Take(Most).ToList();
        var sentence = large.Count == 0
            ? felt.Count == 0 ? "None of its figures tells how it will feel; make a small trial." : "A user will hardly notice a difference: every figure that is felt stays within what is likely to be noticed."
            : $"It will be {string.Join(", and ", large.Select(p => $"{(p.Difference.After > p.Difference.Before ? p.Word.Up : p.Word.Down)} ({Number(p.Difference.Before)} → {Number(p.Difference.After)} {Unit(p.Difference)})"))}.";
        return lost.Count == 0 ? sentence : $"{sentence} It is no longer known for {string.Join(" and ", lost)}.";
    }

    private static string Number(double? value) => value is { } v ? v.ToString(Math.Abs(v) >= 10 ? "0" : "0.##", CultureInfo.InvariantCulture) : "none";

    private static string Unit(FigureDifference difference) => difference.Unit switch
    {
        "Cel" => "°C",
        "mPa.s" => "mPa·s",
        "%" => "% solid",
        "1" => string.Empty,
        "g/(100.g)" => "g/100 g",
        var unit => unit,
    };
}
