using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>Paraffin wax and sunflower wax against print.</summary>
public sealed class MineralAndSunflowerWaxTests
{
    [Theory]
    [InlineData(52, 54)]
    [InlineData(58, 60)]
    public void Paraffin_OfAGrade_MeltsAtItsOwnMeltingPoint(int low, int high)
    {
        var wax = Paraffin("grade", TestFat.Figure(Property.MeltingRange, null, low, high));
        var melting = BlendMelting.Of(TestFat.Blend((wax, 1)));

        // Clear means 1 % is left; the wax is made to be just melted at the middle of its range, half a degree above that.
        melting.ClearPoint!.Value!.Value.ShouldBe((low + high) / 2.0, 0.7);
        melting.Coverage.ShouldBe(1);
        melting.SolidContent.Single(p => p.Temperature == 20).Percent.ShouldBeGreaterThan(90, "it is sold as hard slabs");
    }

    [Fact]
    public void Paraffin_WithoutAMeltingPoint_IsUnknown() =>
        BlendMelting.Of(TestFat.Blend((Paraffin("no-grade"), 1))).Absent.ShouldNotBeNull().ShouldContain("no composition");

    [Theory]
    [InlineData(24, 52.5)]
    [InlineData(27, 59.3)]
    [InlineData(29, 64.9)]
    [InlineData(31, 67.9)]
    [InlineData(33, 72.0)]
    [InlineData(36, 76.3)]
    public void Alkanes_AgainstTheCollection_MeltWithinFourDegrees(int carbons, double printed)
    {
        // ons-melting-points (read). The equation is meant for more than 44 carbons and lies low below; the wax's own melting point
        // sets the chains, so only the slope with length matters: 4 °C is the worst that the collection shows (C24).
        var wax = Paraffin("chains", TestFat.Figure(Property.MeltingPoint, (decimal)printed));
        var alkane = SpeciesOfIngredient.Of(wax, SeedCatalogue.Release).Species.Single(s => s.Species.Name == $"C{carbons} alkane").Species;
        alkane.MeltingPoint.ShouldBe(printed, 4.3);
        alkane.MeltingPoint.ShouldBeLessThan(printed + 0.1);
    }

    [Theory]
    [InlineData("L020", 0.5)]
    [InlineData("L021", 10)]
    public void SunflowerWax_InSoybeanOil_MeltsNearThePrintedGel(string id, double percent)
    {
        // Hwang 2012, abstract (read): "about" 47 and 65 °C, of the gel by calorimetry. Nothing was set on them; 5 °C is what "about"
        // and the difference of a peak and a last crystal are given.
        var row = MeltingFiles.Find(id);
        var melting = BlendMelting.Of(TestFat.Blend((SeedCatalogue.Ingredient("sunflower-wax"), percent), (SeedCatalogue.Ingredient("soybean-oil"), 100 - percent)));
        melting.ClearPoint!.Value!.Value.ShouldBe(row.Printed!.Value.Low, 5);
    }

    [Fact]
    public void LauricFat_WithAStoredMiddleRatio_TakesIt()
    {
        // Random is what interesterification comes to: the lauric rule, which crowds 12:0 in the middle, must give way to it.
        (string, double)[] acids = [("12:0", 48), ("14:0", 18), ("16:0", 9), ("18:1", 25)];
        var natural = TestFat.Of("lauric", IngredientKind.Butter, acids);
        var random = natural with { Properties = [TestFat.Figure(Property.MiddlePositionSaturation, 1)] };
        static double Share(Ingredient fat) => SpeciesOfIngredient.Of(fat, SeedCatalogue.Release).Species.Where(s => s.Species.Name == "LaOLa").Sum(s => s.MolesPerGram);

        Share(random).ShouldBeGreaterThan(2 * Share(natural));
    }

    private static Ingredient Paraffin(string id, params Figure[] figures) => new()
    {
        Id = id,
        Kind = IngredientKind.Wax,
        Names = [new() { Text = "Paraffin", Kind = NameKind.Inci, Evidence = Evidence.Published, Source = "test", Locator = "1" }],
        Properties = figures,
    };
}
