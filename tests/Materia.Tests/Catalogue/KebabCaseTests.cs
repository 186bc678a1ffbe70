using Materia.Catalogue;

namespace Materia.Tests.Catalogue;

public sealed class KebabCaseTests
{
    [Theory]
    [InlineData(IngredientKind.Butter, "butter")]
    [InlineData(IngredientKind.EssentialOil, "essential-oil")]
    public void Word_Kind_IsLowerCaseWithHyphens(IngredientKind kind, string word)
    {
        KebabCase<IngredientKind>.Word(kind).ShouldBe(word);
        KebabCase<IngredientKind>.TryParse(word, out var parsed).ShouldBeTrue();
        parsed.ShouldBe(kind);
    }

    [Theory]
    [InlineData("Butter")]
    [InlineData("essential oil")]
    [InlineData("EssentialOil")]
    [InlineData("0")]
    [InlineData("butter, oil")]
    [InlineData("")]
    [InlineData(null)]
    public void TryParse_OtherSpelling_IsFalse(string? word) => KebabCase<IngredientKind>.TryParse(word, out _).ShouldBeFalse();

    [Fact]
    public void Words_AllProperties_StandOnceEachInOrderOfDeclaration()
    {
        KebabCase<Property>.Words.ShouldBeUnique();
        KebabCase<Property>.Words.Count.ShouldBe(Enum.GetValues<Property>().Length);
        KebabCase<Property>.Words[0].ShouldBe("melting-range");
    }

    [Fact]
    public void Definitions_EveryProperty_HasOneWithABand()
    {
        PropertyDefinition.All.Keys.ShouldBe(Enum.GetValues<Property>(), ignoreOrder: true);
        PropertyDefinition.All.Values.ShouldAllBe(d => d.PlausibleLow < d.PlausibleHigh && d.Title.Length > 0);
    }
}
