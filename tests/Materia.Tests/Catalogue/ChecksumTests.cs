using Materia.Catalogue;

namespace Materia.Tests.Catalogue;

public sealed class ChecksumTests
{
    public static TheoryData<string, CatalogueContent> Changes()
    {
        var content = Samples.Content();
        var (first, second) = (content.Ingredients[0], content.Ingredients[1]);
        var acid = content.FattyAcids[0];
        return new()
        {
            { "an ingredient less", content with { Ingredients = [first] } },
            { "another order", content with { Ingredients = [second, first] } },
            { "another id", content with { Ingredients = [first, second with { Id = "c-butter" }] } },
            { "another kind", content with { Ingredients = [first, second with { Kind = IngredientKind.Oil }] } },
            { "no former id", content with { Ingredients = [first with { FormerIds = [] }, second] } },
            { "another grade of a name", content with { Ingredients = [first, second with { Names = [second.Names[0] with { Evidence = Evidence.Secondary }] }] } },
            { "another source's title", content with { Sources = [content.Sources[0] with { Title = "recalled" }] } },
            { "another last place", content with { FattyAcids = [acid with { MolarMass = 256.430m }] } },
            { "a melting point", content with { FattyAcids = [acid with { MeltingPoint = 0 }] } },
            { "an alcohol", content with { FattyAcids = [acid with { Alcohol = true }] } },
            { "another exposure", content with { Uses = [content.Uses[0] with { Exposure = Exposure.RinseOff }] } },
            { "no uses", content with { Uses = [] } },
        };
    }

    [Fact]
    public void Checksum_EqualContentMadeTwice_IsEqual()
    {
        var checksum = CatalogueJson.Checksum(Samples.Content());

        checksum.ShouldBe(CatalogueJson.Checksum(Samples.Content()));
        checksum.ShouldMatch("^[0-9a-f]{64}$");
    }

    [Theory]
    [MemberData(nameof(Changes))]
    public void Checksum_AnyChange_Differs(string change, CatalogueContent changed) =>
        CatalogueJson.Checksum(changed).ShouldNotBe(CatalogueJson.Checksum(Samples.Content()), change);
}
