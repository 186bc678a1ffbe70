using System.Collections.Frozen;
using System.Runtime.CompilerServices;
using Materia.Catalogue;

namespace Materia.Formulation.Neighbours;

/// <summary>
/// Finds what can stand in for an ingredient of a release, nearest first. Method <c>neighbour-distance</c>. The vectors of a release are
/// read when the first neighbours are asked for and kept as long as the release; a search then runs once over them.
/// </summary>
public sealed class NeighbourSearch
{
    /// <summary>The key of the method.</summary>
    public const string Method = "neighbour-distance";

    private static readonly ConditionalWeakTable<Release, NeighbourSearch> Known = [];
    private static readonly FrozenDictionary<Axis, int> Places = Axes.All.Index().ToFrozenDictionary(p => p.Item, p => p.Index);
    private static readonly FrozenDictionary<IngredientKind, int[]> Columns =
        Enum.GetValues<IngredientKind>().ToFrozenDictionary(k => k, k => Axes.Of(k).Select(a => Places[a]).ToArray());

    private readonly Release release;
    private readonly NeighbourVector[] vectors;
    private readonly FrozenDictionary<string, NeighbourVector> byId;

    private NeighbourSearch(Release release)
    {
        this.release = release;
        vectors = [.. release.Content.Ingredients.Select(i => NeighbourVector.Of(i, release))];
        byId = vectors.ToFrozenDictionary(v => v.Ingredient.Id, StringComparer.Ordinal);
    }

    /// <summary>The search of a release, made at the first call.</summary>
    public static NeighbourSearch Of(Release release) => Known.GetValue(release, static r => new NeighbourSearch(r));

    /// <summary>The neighbours of an ingredient, nearest first.</summary>
    /// <param name="id">An id of the release.</param>
    /// <param name="filter">What comes into question.</param>
    /// <exception cref="ArgumentException">The release has no such ingredient.</exception>
    public NeighbourList Find(string id, NeighbourFilter filter)
    {
        ArgumentNullException.ThrowIfNull(filter);
        if (!byId.TryGetValue(id, out var asked))
        {
            throw new ArgumentException($"The release holds no ingredient {id}.", nameof(id));
        }

        var columns = Columns[asked.Ingredient.Kind];
        var ranked = new PriorityQueue<Ranked, Ranked>(Ranked.FarthestFirst);
        var total = 0;
        foreach (var candidate in vectors)
        {
            if (ReferenceEquals(candidate, asked) || Purpose.Gap(asked, candidate) is not { } gap || !filter.Lets(candidate.Ingredient))
            {
                continue;
            }

            total++;
            var entry = new Ranked(candidate, Comparison.Of(asked, candidate, columns), gap);
            ranked.Enqueue(entry, entry);
            if (ranked.Count > filter.Limit)
            {
                ranked.Dequeue();
            }
        }

        var items = new Neighbour[ranked.Count];
        for (var place = items.Length - 1; place >= 0; place--)
        {
            items[place] = Describe(asked, ranked.Dequeue(), columns);
        }

        return new(total, items);
    }

    private Neighbour Describe(NeighbourVector asked, Ranked ranked, int[] columns)
    {
        var ingredient = ranked.Candidate.Ingredient;
        var (differences, notCompared) = NeighbourWording.Differences(asked, ranked.Candidate, columns);
        return new()
        {
            Id = ingredient.Id,
            Name = ingredient.CommonName(),
            Kind = ingredient.Kind,
            Why = NeighbourWording.Why(asked, ranked.Candidate, release),
            Distance = ranked.Comparison.Distance,
            PurposeGap = ranked.PurposeGap,
            Coverage = ranked.Comparison.Coverage,
            Differences = differences,
            NotCompared = notCompared,
            SwapRatio = SwapRatios.Of(asked.Ingredient, ingredient),
            Warnings = NeighbourWarnings.Of(asked.Ingredient, ingredient, release),
        };
    }

    private readonly record struct Ranked(NeighbourVector Candidate, Comparison Comparison, double PurposeGap)
    {
        public static Comparer<Ranked> FarthestFirst { get; } = Comparer<Ranked>.Create((a, b) =>
            a.Sum.CompareTo(b.Sum) is var order and not 0 ? -order : string.CompareOrdinal(b.Candidate.Ingredient.Id, a.Candidate.Ingredient.Id));

        private double Sum => Comparison.Distance + PurposeGap;
    }
}

/// <summary>Neighbours of an ingredient.</summary>
/// <param name="Total">How many come into question.</param>
/// <param name="Items">The nearest of them, nearest first.</param>
public sealed record NeighbourList(int Total, IReadOnlyList<Neighbour> Items);
