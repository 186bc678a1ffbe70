using Materia.Search.Analysis;

namespace Materia.Tests.Search;

public class WordingTests
{
    [Theory]
    [InlineData("Huile d’Avocat", "huile d avocat")]
    [InlineData("C12-15 Alkyl Benzoate", "c 12 15 alkyl benzoate")]
    [InlineData("CI 77004", "ci 77004")]
    [InlineData("E558", "e 558")]
    [InlineData("8012-89-3", "8012893")]
    [InlineData("232-293-8", "2322938")]
    [InlineData("61789−91–1", "61789911")] // minus sign and en dash
    [InlineData("1,2-hexanediol", "1 2 hexanediol")]
    [InlineData("3-4", "3 4")] // too short for a registry number
    [InlineData("2024--12", "2024 12")]
    [InlineData("ɛbɔ ŋutɔ", "ebo nuto")]
    [InlineData("Ɓaɗi ƙwai", "badi kwai")]
    [InlineData("òrí", "ori")]
    [InlineData("Straße", "strasse")]
    [InlineData("İstanbul ılık", "istanbul ilik")]
    [InlineData("soft\u00adhyphen", "softhyphen")]
    [InlineData("ʻohiʻa", "ohi a")]
    [InlineData("масло ши", "масло ши")]
    [InlineData("масло Ши", "масло ши")]
    [InlineData("乳木果油", "乳木果油")]
    [InlineData("x\ud800y", "x y")]
    [InlineData("(C₁₈H₃₄O₂)", "c 18 h 34 o 2")]
    [InlineData("---", "")]
    public void Of_Text_FoldsAndCuts(string text, string words) => string.Join(' ', Wording.Of(text).Select(w => w.Plain)).ShouldBe(words);

    [Theory]
    [InlineData("Rizinusöl", "rizinusoel")]
    [InlineData("Rizinuso\u0308l", "rizinusoel")]
    [InlineData("Mäusedörnöl", "maeusedoernoel")]
    [InlineData("Smør", "smoer")]
    [InlineData("Råolja", "raaolja")]
    [InlineData("karité", null)]
    [InlineData("naïve", null)]
    public void Of_Umlaut_AlsoSpellsItOut(string text, string? spelled) => Wording.Of(text).ShouldHaveSingleItem().Spelled.ShouldBe(spelled);

    // Counts written out by hand: each is the least number of insertions, deletions, replacements and swaps of neighbours.
    [Theory]
    [InlineData("shea", "shea", 0)]
    [InlineData("shae", "shea", 1)]
    [InlineData("buter", "butter", 1)]
    [InlineData("kaolim", "kaolin", 1)]
    [InlineData("olive", "live", 1)]
    [InlineData("lavander", "lavendre", 2)]
    [InlineData("ca", "abc", 3)] // no letter is touched twice: two edits would insert between swapped letters
    [InlineData("", "oil", 3)]
    public void Between_TwoWords_CountsErrors(string a, string b, int errors)
    {
        EditDistance.Between(a, b).ShouldBe(errors);
        EditDistance.Between(b, a).ShouldBe(errors);
    }
}
