using CsCheck;
using Materia.Catalogue;
using Materia.Search;

namespace Materia.Tests.Search;

public class CursorTests
{
    private const string Alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

    private static readonly SearchRequest Request = new() { Text = "oil", Limit = 2 };

    private static readonly string Cursor = Sample.Index.Search(Request).Next.ShouldNotBeNull();

    [Fact]
    public void Search_CursorWithAnyCharacterChanged_IsAFault()
    {
        for (var at = 0; at < Cursor.Length; at++)
        {
            foreach (var other in Alphabet.Where(c => c != Cursor[at]))
            {
                ShouldBeFault(Request with { After = Cursor[..at] + other + Cursor[(at + 1)..] });
            }
        }
    }

    [Fact]
    public void Search_CursorCutShortOrLengthened_IsAFault()
    {
        for (var length = 0; length < Cursor.Length; length++)
        {
            ShouldBeFault(Request with { After = Cursor[..length] });
        }

        ShouldBeFault(Request with { After = Cursor + "A" });
        ShouldBeFault(Request with { After = Cursor + "=" });
        ShouldBeFault(Request with { After = " " + Cursor });
        ShouldBeFault(Request with { After = new string('A', 100_000) });
    }

    [Fact]
    public void Search_AnyTextAsCursor_IsAFault() => JunkText.Any.Sample(text => ShouldBeFault(Request with { After = text }), iter: 2000);

    [Fact]
    public void Search_CursorOfAnotherRequest_IsAFaultThatSaysSo()
    {
        SearchRequest[] others =
        [
            Request with { Text = "oils" },
            Request with { Kinds = [IngredientKind.Oil] },
            Request with { Functions = ["masking"] },
            Request with { Origins = [OriginKind.Plant] },
            Request with { Charges = [IonicCharge.Cationic] },
            Request with { Groups = ["clay-mask"] },
            Request with { Properties = new Dictionary<PropertyGroup, DecimalRange> { [PropertyGroup.Iodine] = new(1, null) } },
            Request with { Acids = new Dictionary<string, DecimalRange> { ["18:1"] = new(1, null) } },
            Request with { RangeMatch = RangeMatch.Within },
            Request with { Sort = new SearchSort(SortKey.Name) },
        ];
        foreach (var other in others)
        {
            ShouldBeFault(other with { After = Cursor }).ShouldContain("another search");
        }
    }

    [Fact]
    public void Search_CursorOfAnotherRelease_IsAFaultThatSaysSo()
    {
        using var next = IngredientIndex.Build(Sample.Make(8, Sample.Release.Content.Ingredients));

        next.Search(Request with { After = Cursor }).Faults.ShouldHaveSingleItem().Message.ShouldContain("release 8");
    }

    [Fact]
    public void Search_CursorOfAnEqualReleaseOnAnotherNode_GoesOn()
    {
        using var other = IngredientIndex.Build(Sample.Make(7, Sample.Release.Content.Ingredients));

        other.Search(Request with { After = Cursor }).Ids().ShouldBe(Sample.Index.Search(Request with { After = Cursor }).Ids());
    }

    [Fact]
    public void Search_ListsInAnotherOrder_KeepTheCursor()
    {
        var first = new SearchRequest { Kinds = [IngredientKind.Oil, IngredientKind.Butter], Limit = 1 };
        var cursor = Sample.Index.Search(first).Next;

        Sample.Index.Search(first with { Kinds = [IngredientKind.Butter, IngredientKind.Oil], After = cursor }).Faults.ShouldBeEmpty();
    }

    private static string ShouldBeFault(SearchRequest request)
    {
        var page = Sample.Index.Search(request);
        page.Hits.ShouldBeEmpty();
        var fault = page.Faults.ShouldHaveSingleItem();
        fault.Member.ShouldBe("after");
        return fault.Message;
    }
}
