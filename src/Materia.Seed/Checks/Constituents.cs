using System.Globalization;
using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Constituents: percentages in order, and low ends that can stand together.</summary>
internal static class Constituents
{
    /// <summary>Greatest sum of the least shares [%]: 100 % and the rounding of some ten shares to one decimal.</summary>
    public const decimal GreatestSumOfLows = 100.5m;

    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            foreach (var (constituent, at) in Statements.Items(ingredient.Constituents, place, "constituents"))
            {
                new RangeOrder(constituent.Low, constituent.Typical, constituent.High).CheckPercent(at, faults);
            }

            var sum = ingredient.Constituents
                .GroupBy(c => c.Substance, StringComparer.OrdinalIgnoreCase)
                .Sum(g => Least(g.FirstOrDefault(c => c.Used) ?? g.First()));
            if (sum > GreatestSumOfLows)
            {
                faults.Add(
                    place.Member("constituents"),
                    string.Create(CultureInfo.InvariantCulture, $"the least shares of the constituents add up to {sum} %, more than {GreatestSumOfLows} %; check them against the source"));
            }
        }
    }

    private static decimal Least(Constituent constituent) => constituent.Low ?? constituent.Typical ?? 0;
}
