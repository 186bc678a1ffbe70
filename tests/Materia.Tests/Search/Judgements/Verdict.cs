using Materia.Search;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Search.Judgements;

/// <summary>Where the search put the ingredient that was meant.</summary>
/// <param name="Judgement">What was judged.</param>
/// <param name="Place">The place among the hits, from 1; <see langword="null"/> where it is not among the first twenty.</param>
/// <param name="First">The id of the first hit, where there is one.</param>
internal sealed record Verdict(Judgement Judgement, int? Place, string? First)
{
    private static readonly Lazy<IReadOnlyList<Verdict>> Searched = new(Search);

    /// <summary>The verdicts on all judgements over the whole catalogue.</summary>
    public static IReadOnlyList<Verdict> All => Searched.Value;

    /// <summary>One over the place; nothing where it was not found.</summary>
    public double Reciprocal => Place is { } place ? 1.0 / place : 0;

    private static List<Verdict> Search()
    {
        using var index = IngredientIndex.Build(SeedCatalogue.Release);
        return [.. Judgement.All.Select(j => Of(j, index))];
    }

    private static Verdict Of(Judgement judgement, IngredientIndex index)
    {
        var page = index.Search(JudgedRequest.Of(judgement));
        page.Faults.ShouldBeEmpty(judgement.Query);
        var ids = page.Hits.Select(h => h.IngredientId).ToList();
        var place = ids.IndexOf(judgement.Expected);
        return new Verdict(judgement, place < 0 ? null : place + 1, ids.FirstOrDefault());
    }
}
