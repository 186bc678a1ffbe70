using Materia.Catalogue;
using Materia.Search;
using static Materia.Tests.Search.SampleIngredient;

namespace Materia.Tests.Search;

/// <summary>Search by charge, substitution group and the properties of materials that are no fats. The figures are made up.</summary>
public sealed class WorkingSearchTests
{
    private static readonly IngredientIndex Index = IngredientIndex.Build(Sample.Make(1,
    [
        New("firm-clay", IngredientKind.Clay, OriginKind.Mineral, "Firm clay", null)
            .Figure(Property.CationExchangeCapacity, 3, 15).Figure(Property.SwellingVolume, null, null, 4).In("clay-mask").Charged(IonicCharge.Anionic),
        New("swelling-clay", IngredientKind.Clay, OriginKind.Mineral, "Swelling clay", null)
            .Figure(Property.CationExchangeCapacity, 80, 150).Figure(Property.SwellingVolume, 20, 30).In("clay-mask", "swelling-clays").Charged(IonicCharge.Anionic),
        New("water-emulsifier", IngredientKind.Emulsifier, OriginKind.Synthetic, "Water emulsifier", null)
            .Figure(Property.Hlb, null, null, 11).Figure(Property.MolarMass, null, null, 1228).Charged(IonicCharge.Nonionic),
        New("oil-emulsifier", IngredientKind.Emulsifier, OriginKind.Synthetic, "Oil emulsifier", null)
            .Figure(Property.Hlb, 4, 5).Figure(Property.ShelfLife, 24, null).Charged(IonicCharge.Nonionic),
        New("mild-acid", IngredientKind.Preservative, OriginKind.Synthetic, "Mild acid", null)
            .Figure(Property.EffectivePh, null, 5.5m).Figure(Property.FlashPoint, 110, 120).Figure(Property.ShelfLife, null, null, 12),
    ]));

    [Theory]
    [InlineData(PropertyGroup.Hlb, "10..12", "water-emulsifier")]
    [InlineData(PropertyGroup.Hlb, "..4", "oil-emulsifier")]
    [InlineData(PropertyGroup.CationExchangeCapacity, "..20", "firm-clay")]
    [InlineData(PropertyGroup.Swelling, "..8", "firm-clay")]
    [InlineData(PropertyGroup.Swelling, "25..", "swelling-clay")]
    [InlineData(PropertyGroup.ShelfLife, "18..", "oil-emulsifier")]
    [InlineData(PropertyGroup.EffectivePh, "5..6", "mild-acid")]
    [InlineData(PropertyGroup.MolarMass, "1000..", "water-emulsifier")]
    [InlineData(PropertyGroup.FlashPoint, "115..115", "mild-acid")]
    public void Search_RangeOfAProperty_FindsWhatOverlapsAndSaysWhy(PropertyGroup group, string range, string id)
    {
        var page = Index.Search(new SearchRequest { Properties = new Dictionary<PropertyGroup, DecimalRange> { [group] = Sample.Range(range) } });

        page.Ids().ShouldBe([id]);
        page.Hits[0].Matched.Figures.ShouldHaveSingleItem().Group.ShouldBe(group);
    }

    [Fact]
    public void Search_Charge_OneOfTheListMustHold()
    {
        Ids(new() { Charges = [IonicCharge.Anionic] }).ShouldBe(["firm-clay", "swelling-clay"]);
        Ids(new() { Charges = [IonicCharge.Cationic] }).ShouldBeEmpty();
        Ids(new() { Charges = [IonicCharge.Cationic, IonicCharge.Nonionic], Properties = Hlb("10..12") }).ShouldBe(["water-emulsifier"]);
    }

    [Fact]
    public void Search_Group_OneOfTheListMustHold()
    {
        Ids(new() { Groups = ["clay-mask"] }).ShouldBe(["firm-clay", "swelling-clay"]);
        Ids(new() { Groups = ["swelling-clays", "no-such-group"] }).ShouldBe(["swelling-clay"]);
        Ids(new() { Groups = ["no-such-group"] }).ShouldBeEmpty();
    }

    [Fact]
    public void Search_Facets_CountChargesAndGroups()
    {
        var facets = Index.Search(new SearchRequest { Limit = 1 }).Facets;

        facets.Charge.ShouldBe([new("anionic", 2), new("nonionic", 2)]);
        facets.Group.ShouldBe([new("clay-mask", 2), new("swelling-clays", 1)]);
    }

    [Theory]
    [InlineData("hlb", "oil-emulsifier", "water-emulsifier")]
    [InlineData("-swelling", "swelling-clay", "firm-clay")]
    [InlineData("cationExchangeCapacity", "firm-clay", "swelling-clay")]
    [InlineData("-shelfLife", "oil-emulsifier", "mild-acid")]
    public void Search_Sorted_PutsThoseWithTheFigureFirst(string sort, string first, string second)
    {
        SearchSort.TryParse(sort, out var order).ShouldBeTrue();

        Ids(new() { Sort = order }).Take(2).ShouldBe([first, second]);
    }

    private static Dictionary<PropertyGroup, DecimalRange> Hlb(string range) => new() { [PropertyGroup.Hlb] = Sample.Range(range) };

    private static IReadOnlyList<string> Ids(SearchRequest request) => Index.Search(request).Ids();
}
