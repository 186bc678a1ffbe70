using CsCheck;
using Materia.Catalogue;
using Materia.Regulation.Limits;
using static Materia.Tests.Regulation.Rules;

namespace Materia.Tests.Regulation;

/// <summary>Deleting data never turns a verdict into "within" that the whole data contradict.</summary>
public class MissingDataTests
{
    private static readonly string[] Substances = ["78-70-6", "138-86-3", "97-53-0", "93-15-2", "106-24-1"];

    private static readonly Gen<Constituent[]> OilComposition =
        Gen.Select(Gen.Int[0, 18], Gen.Int[0, 20]).Array[Substances.Length]
            .Select(shares => shares.Select((s, i) => Share("substance " + i, Substances[i], s.Item1, s.Item1 + s.Item2)).ToArray())
            .Where(IsPossible);

    private static readonly Gen<(Constituent[][] Oils, decimal[] Percents, decimal[] Limits, bool[] Deleted)> Cases = Gen.Select(
        OilComposition.Array[3],
        Gen.Int[1, 400].Select(p => p / 100m).Array[3],
        Gen.Int[1, 10_000].Select(l => l / 10_000m).Array[Substances.Length],
        Gen.Bool.Array[3 * Substances.Length]);

    [Fact]
    public void Of_DataDeletedAtRandom_IsNeverWithinWhereTheWholeIsOver() => Cases.Sample(c =>
    {
        var whole = Findings(c.Oils, c.Percents, c.Limits);
        var rest = Findings([.. c.Oils.Select((oil, o) => oil.Where((_, i) => !c.Deleted[(o * Substances.Length) + i]).ToArray())], c.Percents, c.Limits);

        foreach (var (id, status) in rest.Where(f => f.Value is LimitStatus.Within or LimitStatus.Near))
        {
            whole[id].ShouldNotBe(LimitStatus.Exceeded);
        }
    });

    /// <summary>A composition is possible when each share's upper end leaves room for the lower ends of all others.</summary>
    private static bool IsPossible(Constituent[] constituents) =>
        constituents.Sum(c => c.Low!.Value) is var sum && sum <= 100 && constituents.All(c => c.High + sum - c.Low <= 100);

    private static Dictionary<string, LimitStatus> Findings(Constituent[][] oils, decimal[] percents, decimal[] limits)
    {
        var release = Release(
            [.. oils.Select((constituents, i) => Oil("oil-" + i, constituents))],
            [.. Substances.Select((cas, i) => Limit("limit " + cas, limits[i], Cas(cas, cas)))],
            [.. Substances.Select(cas => Allergen(cas, Cas(cas, cas)))]);
        var lines = percents.Select((p, i) => ("oil-" + i, p)).ToArray();
        return LimitFindings.Of(Formula(release, Lotion, lines)).ToDictionary(f => f.Id, f => f.Status);
    }
}
