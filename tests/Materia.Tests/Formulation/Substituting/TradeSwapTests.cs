namespace Materia.Tests.Formulation.Substituting;

/// <summary>Swaps that the trade makes. Common practice, no one source: sanity checks, not measurements.</summary>
public class TradeSwapTests
{
    private static readonly string[] HardButters = ["kokum-butter", "sal-butter", "cocoa-butter", "mango-butter", "illipe-butter"];

    // Kokum, sal and cocoa butter stand in for each other as hard butters.
    [Theory]
    [InlineData("kokum-butter")]
    [InlineData("cocoa-butter")]
    [InlineData("sal-butter")]
    public void Find_HardButter_IsReplacedByHardButters(string missing)
    {
        string[] pantry = [.. HardButters.Where(b => b != missing), "shea-butter", "coconut-oil", "sunflower-oil", "castor-oil", "flaxseed-oil"];
        var nearest = Substitutions.Answer(Substitutions.Request(
            Substitutions.Formula((missing, 30), ("olive-oil", 65), ("beeswax", 5)), missing, pantry)).Proposals[0].Formula;

        HardButters.Sum(b => nearest.Share(b)).ShouldBeGreaterThan(15);
    }

    // Cetyl for cetearyl alcohol, about weight for weight.
    [Fact]
    public void Find_CetearylAlcohol_IsReplacedByCetylAlcohol()
    {
        var nearest = Substitutions.Answer(Substitutions.Request(
            Substitutions.Formula(("cetearyl-alcohol", 6), ("shea-butter", 34), ("olive-oil", 60)), "cetearyl-alcohol", "cetyl-alcohol", "stearic-acid", "sunflower-oil")).Proposals[0].Formula;

        nearest.Share("cetyl-alcohol").ShouldBeInRange(4, 8);
    }

    // Avocado or sweet almond for olive: oils of much oleic acid, not the drying or the short-chain ones.
    [Fact]
    public void Find_OliveOil_IsReplacedByAvocadoOrAlmond()
    {
        var nearest = Substitutions.Answer(Substitutions.Request(
            Substitutions.Formula(("olive-oil", 50), ("shea-butter", 45), ("beeswax", 5)), "olive-oil", "avocado-oil", "sweet-almond-oil", "flaxseed-oil", "coconut-oil", "castor-oil")).Proposals[0].Formula;

        (nearest.Share("avocado-oil") + nearest.Share("sweet-almond-oil")).ShouldBeGreaterThan(25);
    }

    // Candelilla in place of beeswax at about half to two thirds, the rest in oil.
    [Fact]
    public void Find_Beeswax_IsReplacedByLessCandelilla()
    {
        var nearest = Substitutions.Answer(Substitutions.Request(
            Substitutions.Formula(("beeswax", 20), ("olive-oil", 80)), "beeswax", "candelilla-wax")).Proposals[0].Formula;

        (nearest.Share("candelilla-wax") / 20).ShouldBeInRange(0.45m, 0.70m);
    }
}
