using CsCheck;
using Materia.Search;
using Materia.Search.Analysis;

namespace Materia.Tests.Search;

public class JunkInputTests
{
    [Fact]
    public void Search_AnyText_GivesFaultsOrSoundPages() => JunkText.Any.Sample(
        text =>
        {
            var page = Sample.Search(text);
            if (page.Faults.Count > 0)
            {
                page.Faults.ShouldAllBe(f => f.Member == "text" && f.Message.Contains("shorten"));
                return;
            }

            page.Hits.Count.ShouldBe(page.Total);
            page.Hits.Select(h => h.IngredientId).Distinct().Count().ShouldBe(page.Total);
            page.Facets.Kind.Sum(f => f.Count).ShouldBe(page.Total);
            page.Hits.ShouldAllBe(h => string.IsNullOrWhiteSpace(text) || h.Matched.Names.Count > 0);
        },
        iter: 3000);

    [Fact]
    public void SuggestAndNearestIds_AnyText_GiveNoIngredientTwice() => JunkText.Any.Sample(
        text =>
        {
            Sample.Index.Suggest(text, 10).Select(s => s.IngredientId).ShouldBeUnique();
            Sample.Index.NearestIds(text, 10).ShouldBeUnique();
        },
        iter: 3000);

    [Fact]
    public void Of_AnyText_GivesFoldedWordsThatFoldToThemselves() => JunkText.Any.Sample(
        text =>
        {
            foreach (var word in Wording.Of(text))
            {
                word.Plain.ShouldNotBeEmpty();
                word.Plain.ShouldNotContain(' ');
                Wording.Of(word.Plain).Select(w => w.Plain).ShouldBe([word.Plain]);
            }
        },
        iter: 3000);

    [Fact]
    public void Search_MisspeltName_IsFoundAgain()
    {
        // One letter of a word of eight or more letters, the first one apart, is changed, lost, doubled or swapped with the next.
        var words = Sample.Release.Content.Ingredients
            .SelectMany(i => i.Names.SelectMany(n => Wording.Of(n.Text)).Select(w => (i.Id, Word: w.Plain)))
            .Where(w => w.Word.Length >= 8 && w.Word.All(char.IsAsciiLetter)).Distinct().ToArray();
        words.Length.ShouldBeGreaterThan(20);

        Gen.Select(Gen.OneOf(words), Gen.Double.Unit, Gen.Int[0, 3], Gen.Char['a', 'z']).Sample(
            (word, place, error, letter) =>
            {
                var at = 1 + (int)(place * (word.Word.Length - 2));
                var (head, tail) = (word.Word[..at], word.Word[at..]);
                var typed = error switch
                {
                    0 => head + letter + tail[1..],
                    1 => head + tail[1..],
                    2 => head + tail[0] + tail,
                    _ => head + tail[1] + tail[0] + tail[2..],
                };

                Sample.Search(typed).Ids().ShouldContain(word.Id, typed);
            },
            iter: 2000);
    }

    [Fact]
    public void Search_TextAtTheLimits_IsAnswered()
    {
        Sample.Search(new string('a', SearchRequest.LongestText)).Faults.ShouldBeEmpty();
        Sample.Search(string.Join(' ', Enumerable.Repeat("oil", SearchRequest.MostWords))).Total.ShouldBeGreaterThan(5);
    }

    [Fact]
    public void Search_TextBeyondTheLimits_IsAFault()
    {
        Sample.Search(new string('a', SearchRequest.LongestText + 1)).Faults.ShouldHaveSingleItem().Member.ShouldBe("text");
        Sample.Search(string.Join(' ', Enumerable.Repeat("oil", SearchRequest.MostWords + 1))).Faults.ShouldHaveSingleItem().Member.ShouldBe("text");
    }
}
