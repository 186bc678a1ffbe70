using Materia.Search;

namespace Materia.Tests.Search;

public class PagingTests
{
    public static TheoryData<string> Sorts => [.. SearchSort.Words];

    [Theory]
    [MemberData(nameof(Sorts))]
    public void Search_PagedToTheEnd_GivesEachHitOnceInTheOrderOfOnePage(string sort)
    {
        foreach (var text in new[] { null, "oil", "butr" })
        {
            var request = new SearchRequest { Text = text, Sort = Sort(sort), Limit = 100 };
            var whole = Sample.Index.Search(request);
            whole.Next.ShouldBeNull();
            whole.Hits.Count.ShouldBe(whole.Total);

            foreach (var limit in new[] { 1, 2, 3, 7 })
            {
                Paged(request with { Limit = limit }).ShouldBe(whole.Ids());
            }
        }
    }

    [Fact]
    public void Search_LimitChangedBetweenPages_GoesOnWhereItWas()
    {
        var first = Sample.Index.Search(new SearchRequest { Limit = 3 });
        var second = Sample.Index.Search(new SearchRequest { Limit = 5, After = first.Next });

        first.Ids().Concat(second.Ids()).ShouldBe(Sample.Index.Search(new SearchRequest { Limit = 8 }).Ids());
    }

    [Fact]
    public void Search_LastPageExactlyFull_HasNoNext() =>
        Sample.Index.Search(new SearchRequest { Text = "cera", Limit = 2 }).Next.ShouldBeNull();

    [Fact]
    public void Search_SortByMelting_PutsMissingFiguresLastEitherWay()
    {
        // Centres: coconut 24.5, cocoa 33, cupuacu 34 (its one end), mango 36 and sal 36 (its one end), shea 38.5.
        var up = Sample.Index.Search(new SearchRequest { Text = "butter", Sort = Sort("melting") }).Ids();
        var down = Sample.Index.Search(new SearchRequest { Text = "butter", Sort = Sort("-melting") }).Ids();

        up.ShouldBe(["cocoa-butter", "cupuacu-butter", "mango-butter", "sal-butter", "shea-butter", "murumuru-butter"]);
        down.ShouldBe(["shea-butter", "mango-butter", "sal-butter", "cupuacu-butter", "cocoa-butter", "murumuru-butter"]);
    }

    [Fact]
    public void Search_SortByName_FoldsAccentsAndReverses()
    {
        var up = Sample.Index.Search(new SearchRequest { Text = "seed", Sort = Sort("name") }).Ids();
        var down = Sample.Index.Search(new SearchRequest { Text = "seed", Sort = Sort("-name") }).Ids();

        up.ShouldBe(["babassu-oil", "castor-oil", "cocoa-butter", "cupuacu-butter", "jojoba-oil", "mango-butter", "murumuru-butter", "rosehip-seed-oil", "sal-butter"]);
        down.ShouldBe(up.Reverse());
    }

    [Theory]
    [InlineData("")]
    [InlineData("-")]
    [InlineData("-relevance")]
    [InlineData("Name")]
    [InlineData("--name")]
    [InlineData("price")]
    [InlineData(null)]
    public void TryParse_NoSort_ReturnsFalse(string? text) => SearchSort.TryParse(text, out _).ShouldBeFalse();

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(101)]
    [InlineData(1_000_000)]
    public void Search_LimitOutOfBounds_IsAFault(int limit)
    {
        var page = Sample.Index.Search(new SearchRequest { Limit = limit });

        page.Faults.ShouldHaveSingleItem().Member.ShouldBe("limit");
        page.Hits.ShouldBeEmpty();
    }

    private static SearchSort Sort(string text)
    {
        SearchSort.TryParse(text, out var sort).ShouldBeTrue();
        sort.ToString().ShouldBe(text);
        return sort;
    }

    private static List<string> Paged(SearchRequest request)
    {
        var ids = new List<string>();
        string? after = null;
        do
        {
            var page = Sample.Index.Search(request with { After = after });
            ids.AddRange(page.Ids());
            after = page.Next;

            // A page that gave nothing would never end.
            page.Hits.Count.ShouldBeInRange(after is null ? 0 : request.Limit, request.Limit);
        }
        while (after is not null);
        return ids;
    }
}
