using CsCheck;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Declaring;
using static Materia.Tests.Regulation.Labels;

namespace Materia.Tests.Regulation.Declaring;

/// <summary>The order of an ingredient list.</summary>
public class DeclarationOrderTests
{
    // ../shared/data/regulation/worked-examples.md, 8; the shares add up to 100 there.
    private static readonly (string, decimal)[] Example8 =
    [
        ("xanthan-gum", 0.3m), ("iron-oxide-red", 0.1m), ("water", 70), ("glycerin", 5), ("phenoxyethanol", 0.9m), ("shea-butter", 20),
        ("perfume", 0.5m), ("cetyl-alcohol", 3), ("tocopherol", 0.2m),
    ];

    [Fact]
    public void Of_WorkedExample8_OrdersByWeightThenFreeThenColourants()
    {
        var draft = Draft(Authority.Eu, Cream, Example8);

        draft.Text.ShouldBe("Ingredients: Aqua, Butyrospermum Parkii Butter, Glycerin, Cetyl Alcohol, Phenoxyethanol, Parfum, Xanthan Gum, Tocopherol, CI 77491");
        draft.Entries.Select(e => e.Group).ShouldBe(
            [.. Enumerable.Repeat(DeclarationGroup.Ordered, 4), .. Enumerable.Repeat(DeclarationGroup.Free, 4), DeclarationGroup.Colourant]);
        draft.Groups.Select(g => (g.First, g.Count)).ShouldBe([("Aqua", 4), ("Phenoxyethanol", 4), ("CI 77491", 1)]);
        draft.Rules.Select(r => r.Id).ShouldBeSubsetOf(LabelRules.All.Select(r => r.Id));
    }

    // EU-ING-04 and US-ING-04: exactly 1 % is ordered in Europe and free in the United States.
    [Theory]
    [InlineData(Authority.Eu, "1", DeclarationGroup.Ordered)]
    [InlineData(Authority.Eu, "0.9999999", DeclarationGroup.Free)]
    [InlineData(Authority.Gb, "1", DeclarationGroup.Ordered)]
    [InlineData(Authority.Us, "1", DeclarationGroup.Free)]
    [InlineData(Authority.Us, "1.0000001", DeclarationGroup.Ordered)]
    public void Of_ExactlyOnePercent_DiffersByMarket(Authority law, string percent, DeclarationGroup group)
    {
        var share = decimal.Parse(percent, System.Globalization.CultureInfo.InvariantCulture);

        var entry = Draft(law, Cream, ("water", 100 - share), ("glycerin", share)).Entries.Single(e => e.Name == "Glycerin");

        entry.Group.ShouldBe(group);
        entry.Rules.Contains(law == Authority.Us ? "US-ING-04" : "EU-ING-04").ShouldBe(share == 1);
    }

    // 0.1 + 0.2 + 0.7 is 1 in decimals and less than 1 in binary fractions.
    [Fact]
    public void Of_SharesThatAddUpToOnePercent_AreDecidedExactly()
    {
        var release = Release(
            Named("a", Materia.Catalogue.IngredientKind.Humectant, "Glycerin"), Named("b", Materia.Catalogue.IngredientKind.Humectant, "Glycerin"));

        Draft(release, Authority.Eu, Cream, ("water", 99), ("glycerin", 0.1m), ("a", 0.2m), ("b", 0.7m))
            .Entries.Single(e => e.Name == "Glycerin").Group.ShouldBe(DeclarationGroup.Ordered);
    }

    [Fact]
    public void Of_ColourantAboveOnePercent_StillStandsLast() =>
        Draft(Authority.Eu, Cream, ("iron-oxide-red", 30), ("water", 69.5m), ("tocopherol", 0.5m)).Text.ShouldBe("Ingredients: Aqua, Tocopherol, CI 77491");

    [Fact]
    public void Of_LinesShuffled_GivesTheSameList() => Gen.Shuffle(Example8).Sample(lines =>
        Draft(Authority.Eu, Cream, lines).Text.ShouldBe(Draft(Authority.Eu, Cream, Example8).Text));

    // Rules EU-ING-02 to -05 as label-rules.csv words their tests.
    [Fact]
    public void Of_RandomShares_KeepTheRules() => Gen.Decimal[0.01m, 30m].Array[9].Sample(raw =>
    {
        string[] ids = ["water", "shea-butter", "glycerin", "cetyl-alcohol", "phenoxyethanol", "perfume", "xanthan-gum", "tocopherol", "iron-oxide-red"];
        var entries = Draft(Authority.Eu, Cream, [.. ids.Zip(raw, (id, share) => (id, decimal.Round(share, 4)))]).Entries;

        var others = entries.Where(e => e.Group != DeclarationGroup.Colourant).ToList();
        entries.Skip(others.Count).ShouldAllBe(e => e.Group == DeclarationGroup.Colourant);
        var ordered = others.TakeWhile(e => e.Share.Typical >= 1).ToList();
        ordered.Zip(ordered.Skip(1)).ShouldAllBe(p => p.First.Share.Typical >= p.Second.Share.Typical);
        others.Skip(ordered.Count).ShouldAllBe(e => e.Share.Typical < 1);
    });
}
