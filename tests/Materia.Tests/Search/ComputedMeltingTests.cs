using Materia.Chemistry.Melting;
using Materia.Search;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Search;

/// <summary>Ranges and orders of computed melting, on the shipped catalogue.</summary>
public sealed class ComputedMeltingTests
{
    // Figures are rounded to a tenth, and each of the two clear points is found within two hundredths.
    private const double Rounding = 0.05 + 0.02;

    private static readonly PropertyGroup[] Computed = [PropertyGroup.SolidAt20, PropertyGroup.SolidAt32, PropertyGroup.ClearPoint];

    private static readonly Lazy<IngredientIndex> Index = new(() => IngredientIndex.Build(SeedCatalogue.Release));

    // Belitz, Grosch and Schieberle, Food Chemistry (2009): coconut melts at 23 to 28 Cel, cocoa at 30 to 36.
    [Theory]
    [InlineData("coconut-oil", true)]
    [InlineData("cocoa-butter", false)]
    public void Search_ClearBelowThirty_TellsCoconutFromCocoa(string id, bool found) => InRange(PropertyGroup.ClearPoint, "..30").Contains(id).ShouldBe(found);

    // Four cocoa butters have 70 to 83 % solid at 20 Cel (recalled); liquid oils have none.
    [Fact]
    public void Search_HardAtRoomTemperature_FindsCocoaButterAndNoLiquidOil()
    {
        var hard = InRange(PropertyGroup.SolidAt20, "60..");

        hard.ShouldContain("cocoa-butter");
        hard.ShouldNotContain("sunflower-oil");
        hard.ShouldNotContain("olive-oil");
    }

    [Fact]
    public void Search_WithoutAComputableMelting_NeverMatches()
    {
        var unknown = SeedCatalogue.Release.Content.Ingredients.Where(i => IngredientMelting.Of(i, SeedCatalogue.Release).Absent is not null).Select(i => i.Id).ToList();

        unknown.ShouldContain("kaolin");
        foreach (var group in Computed)
        {
            InRange(group, "-1000..").Intersect(unknown).ShouldBeEmpty(group.Name());
            InRange(group, "-1000..1000", RangeMatch.Within).Intersect(unknown).ShouldBeEmpty(group.Name());
        }
    }

    [Fact]
    public void Search_EveryFigure_IsThatOfTheWholeCurve()
    {
        foreach (var (id, figures) in AllFigures())
        {
            var melting = IngredientMelting.Of(SeedCatalogue.Ingredient(id), SeedCatalogue.Release);
            figures.ShouldAllBe(f => f.Computed && f.Method == melting.Method && f.Property == null && f.Low == f.High, id);
            ((double)figures.Single(f => f.Group == PropertyGroup.SolidAt20).Low!).ShouldBe(melting.SolidContent.Single(p => p.Temperature == 20).Percent, Rounding, id);
            ((double)figures.Single(f => f.Group == PropertyGroup.SolidAt32).Low!).ShouldBe(melting.SolidContent.Single(p => p.Temperature == 32).Percent, Rounding, id);
            ((double)figures.Single(f => f.Group == PropertyGroup.ClearPoint).Low!).ShouldBe(melting.ClearPoint!.Value!.Value, Rounding, id);
        }
    }

    [Fact]
    public void Search_StoredFigure_IsNotComputed() =>
        Search(new() { Properties = Asked(PropertyGroup.Melting, "0.."), Limit = 100 }).Hits.SelectMany(h => h.Matched.Figures).ShouldAllBe(f => !f.Computed && f.Method == null);

    [Theory]
    [InlineData(SortKey.SolidAt20, PropertyGroup.SolidAt20)]
    [InlineData(SortKey.SolidAt32, PropertyGroup.SolidAt32)]
    [InlineData(SortKey.ClearPoint, PropertyGroup.ClearPoint)]
    public void Search_SortedByAComputedFigure_PutsThoseWithoutItLast(SortKey key, PropertyGroup group)
    {
        var with = InRange(group, "-1000..").ToHashSet();

        foreach (var down in (bool[])[false, true])
        {
            var ids = All(new() { Sort = new(key, down) });
            ids.Count.ShouldBe(SeedCatalogue.Release.Content.Ingredients.Count);
            ids.Take(with.Count).ShouldBe(with, ignoreOrder: true);
            var values = All(new() { Properties = Asked(group, "-1000.."), Sort = new(key, down) }, h => h.Matched.Figures.Single().Low!.Value);
            values.ShouldBe(down ? values.OrderDescending() : values.Order());
        }
    }

    [Fact]
    public void Words_OfFigures_AreThoseOfTheRanges() =>
        SearchSort.Words.Select(w => w.TrimStart('-')).Except(["relevance", "name"]).Where(w => !PropertyGroups.TryParse(w, out _)).ShouldBeEmpty();

    [Theory]
    [InlineData("solidAt20", SortKey.SolidAt20, false)]
    [InlineData("-clearPoint", SortKey.ClearPoint, true)]
    public void TryParse_ComputedFigure_ReadsItAndWritesItBack(string text, SortKey key, bool down)
    {
        SearchSort.TryParse(text, out var sort).ShouldBeTrue();

        sort.ShouldBe(new SearchSort(key, down));
        sort.ToString().ShouldBe(text);
    }

    [Theory]
    [InlineData("solid-at20")]
    [InlineData("SolidAt20")]
    [InlineData("-")]
    [InlineData("")]
    public void TryParse_OtherSpelling_IsRefused(string text) => SearchSort.TryParse(text, out _).ShouldBeFalse();

    private static List<(string Id, IReadOnlyList<MatchedFigure> Figures)> AllFigures()
    {
        var found = All(new() { Properties = Computed.ToDictionary(g => g, _ => Sample.Range("-1000..")) }, h => (h.IngredientId, h.Matched.Figures));
        found.Count.ShouldBeGreaterThan(50);
        return found;
    }

    private static Dictionary<PropertyGroup, DecimalRange> Asked(PropertyGroup group, string range) => new() { [group] = Sample.Range(range) };

    private static List<string> InRange(PropertyGroup group, string range, RangeMatch match = RangeMatch.Overlap) =>
        All(new() { Properties = Asked(group, range), RangeMatch = match });

    private static SearchPage Search(SearchRequest request)
    {
        var page = Index.Value.Search(request);
        page.Faults.ShouldBeEmpty();
        return page;
    }

    private static List<string> All(SearchRequest request) => All(request, h => h.IngredientId);

    private static List<T> All<T>(SearchRequest request, Func<SearchHit, T> select)
    {
        var hits = new List<T>();
        for (string? after = null; ;)
        {
            var page = Search(request with { Limit = 100, After = after });
            hits.AddRange(page.Hits.Select(select));
            if (page.Next is null)
            {
                return hits;
            }

            after = page.Next;
        }
    }
}
