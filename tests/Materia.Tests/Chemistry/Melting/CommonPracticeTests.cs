using Materia.Catalogue;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>
/// What every maker and fat chemist knows of the catalogue's own fats: common practice, no printed figures of one sample, so
/// the expectations are wide.
/// </summary>
public sealed class CommonPracticeTests
{
    [Fact]
    public void Coconut_OnAWarmDay_IsLiquid()
    {
        // Common practice: coconut oil melts at 24 to 26 °C; Belitz, Table 14.8 (read): 20 to 28 °C. Clear means 1 % is left.
        var melting = Melt(("coconut-oil", 100));
        At(melting, 27).ShouldBeLessThanOrEqualTo(1);
        At(melting, 20).ShouldBeGreaterThan(20, "it is a firm white paste in a cool room");
    }

    [Fact]
    public void CocoaButter_Between30And35_LosesMostOfItsSolid()
    {
        // Common practice: snaps at room temperature, gone in the mouth. Belitz, Table 14.9 (read): melts at 28 to 36 °C.
        var melting = Melt(("cocoa-butter", 100));
        At(melting, 25).ShouldBeGreaterThan(60, "hard and brittle");
        (At(melting, 30) - At(melting, 35)).ShouldBeGreaterThan(30, "steep");
        At(melting, 37).ShouldBeLessThan(5);
    }

    [Fact]
    public void Shea_OnTheSkin_HasALongTail()
    {
        // Common practice: soft at room temperature yet slow to vanish; melts at 35 to 40 °C (draft regional standard, read).
        var melting = Melt(("shea-butter", 100));
        At(melting, 25).ShouldBeInRange(15, 50);
        At(melting, 32).ShouldBeGreaterThan(5);
        At(melting, 45).ShouldBeLessThan(3);
    }

    [Fact]
    public void Beeswax_FivePercentInSunflowerOil_ClearsInTheMidForties()
    {
        // Common practice: 43 to 48 °C. So little solid counts as clear at a twentieth of what there is at 10 °C.
        var melting = Melt(("beeswax", 5), ("sunflower-oil", 95));
        melting.ClearPoint!.Value!.Value.ShouldBeInRange(43, 48);
        melting.Texture.Single(t => t.Temperature == 20).Words.ShouldNotBe("pourable", "5 % of beeswax gels an oil");
    }

    [Fact]
    public void OliveOil_AtRoomTemperature_Pours() =>
        Melt(("olive-oil", 100)).Texture.Single(t => t.Temperature == 20).Words.ShouldBe("pourable");

    [Theory]
    [InlineData("beeswax")]
    [InlineData("candelilla-wax")]
    [InlineData("carnauba-wax")]
    [InlineData("rice-bran-wax")]
    public void Butter_WithTenPercentWax_IsFirmerWhenWarm(string wax)
    {
        // Common practice: wax is what keeps a balm up in summer. Asked from 30 °C on, where wax does not merely take a hard fat's place.
        var (with, without) = (Melt((wax, 10), ("shea-butter", 90)), Melt(("shea-butter", 100)));
        foreach (var t in (int[])[35, 40, 45])
        {
            At(with, t).ShouldBeGreaterThan(At(without, t), $"{t} °C");
        }

        with.ClearPoint!.Value!.Value.ShouldBeGreaterThan(without.ClearPoint!.Value!.Value);
    }

    [Fact]
    public void CocoaButter_WithTristearin_NeverClearsEarlier()
    {
        // M133: cocoa butter + tristearin is monotectic (Joshi 2020, abstract, read): no blend melts below cocoa butter.
        var cocoa = SeedCatalogue.Ingredient("cocoa-butter");
        var tristearin = TestFat.Of("tristearin", IngredientKind.Butter, ("18:0", 100));
        var clear = Enumerable.Range(0, 6).Select(i => BlendMelting.Of(TestFat.Blend((cocoa, 100 - (10 * i)), (tristearin, 10 * i))).ClearPoint!.Value!.Value).ToList();
        clear.ShouldBe(clear.Order());
    }

    [Theory]
    [InlineData("18:0-ol", "18:0")]
    [InlineData("14:0-ol", "12:0")]
    [InlineData("16:0-ol", "14:0")]
    [InlineData("18:0-ol", "16:0")]
    public void AlcoholWithAcid_SomewhereBetween_MeltsBelowBoth(string alcohol, string acid)
    {
        // M134, M136 to M138: eutectic pairs (Thermochim Acta 404, 2003; Maximo 2014, abstracts, read).
        var a = TestFat.Of("alcohol", IngredientKind.FattyAlcohol) with { FattyAcidProfiles = [TestFat.Sample([(alcohol, 100)], ProfilePart.Alcohols)] };
        var b = TestFat.Of("acid", IngredientKind.FattyAcid, (acid, 100));
        var liquidus = Enumerable.Range(0, 21).Select(i => EutecticPredictions.Liquidus(TestFat.Blend((a, 100 - (5 * i)), (b, 5 * i)))).ToList();

        // A kelvin apart is more than reading the curve costs (0.02 °C).
        liquidus.Min().ShouldBeLessThan(Math.Min(liquidus[0], liquidus[^1]) - 1);
    }

    private static double At(BlendMelting melting, double celsius) => melting.SolidContent.Single(p => p.Temperature == celsius).Percent;

    private static BlendMelting Melt(params (string Id, double Percent)[] parts) =>
        BlendMelting.Of(TestFat.Blend([.. parts.Select(p => (SeedCatalogue.Ingredient(p.Id), p.Percent))]));
}
