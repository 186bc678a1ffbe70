using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Lookup;

namespace Materia.Tests.Regulation;

/// <summary>Finding limits by what they name. Materials and rules are made up; only the CAS numbers are real.</summary>
public sealed class LimitLookupTests
{
    private const string Source = "sample";

    private static readonly Ingredient Oil = Material("oil", "Fictum Oil", "8000-28-0") with
    {
        Constituents = [new Constituent { Substance = "linalool", Cas = "78-70-6", Typical = 30, Evidence = Evidence.Secondary, Source = Source }],
    };

    private static readonly Ingredient Acid = Material("acid", "Fictic Acid", "65-85-0");

    private static readonly Ingredient Blend = Material("blend", "Blend Of Parts", "50-00-0") with
    {
        Parts =
        [
            new CompositePart { InciName = "Fictum Oil", Ingredient = "oil", Typical = 60, Evidence = Evidence.Secondary, Source = Source },
            new CompositePart { InciName = "Sodium Fictate", Cas = "532-32-1", Typical = 40, Evidence = Evidence.Secondary, Source = Source },
        ],
    };

    private static readonly Limit[] Limits =
    [
        Rule("by-number", new RegulatedMember { Name = "fictic acid", Cas = "65-85-0" }, new RegulatedMember { Name = "sodium salt", Cas = "532-32-1" }),
        Rule("by-name", new RegulatedMember { Name = "the oil", InciName = "FICTUM OIL" }),
        Rule("by-id", new RegulatedMember { Name = "the pressed oil", Ingredient = "oil" }) with { ExceptIngredients = ["blend"] },
        Rule("of-constituent", new RegulatedMember { Name = "linalool", Cas = "78-70-6" }),
        Rule("of-number-of-the-mixture", new RegulatedMember { Name = "formaldehyde", Cas = "50-00-0" }),
    ];

    private static readonly Release Sample = new(1, DateTimeOffset.UnixEpoch, "x", new CatalogueContent
    {
        Ingredients = [Acid, Blend, Oil],
        Sources = [],
        FattyAcids = [],
        Uses = [],
        Limits = Limits,
    });

    [Fact]
    public void Find_IngredientAlone_GivesWhatNamesItByNumberNameOrId()
    {
        Ids(Oil, withConstituents: false).ShouldBe(["by-name", "by-id"]);
        Ids(Acid, withConstituents: false).ShouldBe(["by-number"]);
    }

    [Fact]
    public void Find_WithConstituents_SaysWhichIsWhich()
    {
        LimitLookup.Of(Sample).Find(Oil, Sample, withConstituents: true).Select(m => (m.Limit.Id, m.Name, m.As)).ShouldBe(
            [("by-name", "Name of oil", MatchedAs.Itself), ("by-id", "Name of oil", MatchedAs.Itself), ("of-constituent", "linalool", MatchedAs.Constituent)]);
    }

    /// <summary>A mixture answers for its parts and their constituents; its own number is the number of none of them.</summary>
    [Fact]
    public void Find_Mixture_GivesLimitsOfItsPartsAndMindsExceptions()
    {
        LimitLookup.Of(Sample).Find(Blend, Sample, withConstituents: true).Select(m => (m.Limit.Id, m.As)).ShouldBe(
            [("by-number", MatchedAs.Part), ("by-name", MatchedAs.Part), ("of-constituent", MatchedAs.Constituent)]);
    }

    [Theory]
    [InlineData("65-85-0", "by-number")]
    [InlineData("FICTIC acid", "by-number")]
    [InlineData(" fictum oil ", "by-name")]
    [InlineData("rule by-id", "by-id")]
    public void Find_Text_IsForgivingOfCaseAndBlanks(string text, string expected) =>
        LimitLookup.Of(Sample).Find(text).Select(m => m.Limit.Id).ShouldBe([expected]);

    [Fact]
    public void Find_TextThatIsNoWholeName_GivesNamesThatHoldIt()
    {
        LimitLookup.Of(Sample).Find("oil").Select(m => m.Limit.Id).ShouldBe(["by-name", "by-id"]);
        LimitLookup.Of(Sample).Find("oi").ShouldBeEmpty();
        LimitLookup.Of(Sample).Find("wax").ShouldBeEmpty();
    }

    private static IEnumerable<string> Ids(Ingredient ingredient, bool withConstituents) =>
        LimitLookup.Of(Sample).Find(ingredient, Sample, withConstituents).Select(m => m.Limit.Id);

    private static Ingredient Material(string id, string inci, string cas) => new()
    {
        Id = id,
        Kind = IngredientKind.EssentialOil,
        Names =
        [
            new IngredientName { Text = "Name of " + id, Kind = NameKind.Common, Evidence = Evidence.Secondary, Source = Source },
            new IngredientName { Text = inci, Kind = NameKind.Inci, Evidence = Evidence.Secondary, Source = Source },
        ],
        Numbers = [new RegistryNumber { Registry = Registry.Cas, Number = cas, Evidence = Evidence.Secondary, Source = Source }],
    };

    private static Limit Rule(string id, params RegulatedMember[] members) => new()
    {
        Id = id,
        Substance = "Rule " + id,
        Authority = Authority.Eu,
        Kind = LimitKind.Restricted,
        Members = members,
        Scope = new ProductScope(),
        ScopeText = "All products",
        Evidence = Evidence.Secondary,
        Source = Source,
    };
}
