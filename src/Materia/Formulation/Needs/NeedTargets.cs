using System.Globalization;
using Materia.Catalogue;
using Materia.Catalogue.Needs;

namespace Materia.Formulation.Needs;

/// <summary>Puts the targets of several needs together.</summary>
internal static class NeedTargets
{
    public static (IReadOnlyList<NeedTarget> Targets, IReadOnlyList<NeedContradiction> Unmet) Of(IReadOnlyList<Need> needs)
    {
        var targets = new List<NeedTarget>();
        var unmet = new List<NeedContradiction>();
        foreach (var group in ResolvedNeeds.Effects(needs, NeedEffectKind.Target).GroupBy(e => (e.Effect.Property!.Value, e.Effect.Temperature, e.Effect.Acid)))
        {
            var single = group.Select(e => Target([e])).ToList();
            var low = single.Max(t => t.Low);
            var high = single.Min(t => t.High);
            if (low > high)
            {
                targets.AddRange(single);
                var keys = group.Select(e => e.Need.Id).Distinct(StringComparer.Ordinal).ToList();
                unmet.Add(new(keys, $"{string.Join(" and ", keys)} set {Describe(group.Key)} to ranges without a value in common ({string.Join("; ", single.Select(Range))}). Choose one, or make two products."));
                continue;
            }

            targets.Add(Target([.. group]) with { Low = low, High = high });
        }

        return (targets, unmet);
    }

    private static NeedTarget Target(IReadOnlyList<(Need Need, NeedEffect Effect)> effects)
    {
        var first = effects[0].Effect;
        return new(
            first.Property!.Value,
            first.Temperature,
            first.Acid,
            (double?)first.Low,
            (double?)first.High,
            (double)effects.Max(e => e.Effect.Weight ?? 1),
            [.. effects.Select(e => NeedReason.Of(e.Need, e.Effect))]);
    }

    private static string Describe((TargetProperty Property, decimal? Temperature, string? Acid) key) =>
        KebabCase<TargetProperty>.Word(key.Property) + (key.Acid is { } acid ? " " + acid : string.Empty)
        + (key.Temperature is { } at ? string.Create(CultureInfo.InvariantCulture, $" at {at} Cel") : string.Empty);

    private static string Range(NeedTarget target) =>
        string.Create(CultureInfo.InvariantCulture, $"{target.Because[0].Need} {target.Low}..{target.High}");
}
