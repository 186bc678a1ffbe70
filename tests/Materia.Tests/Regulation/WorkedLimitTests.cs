using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation;
using Materia.Regulation.Limits;
using Materia.Tests.Chemistry;
using static Materia.Tests.Regulation.Rules;

namespace Materia.Tests.Regulation;

/// <summary>
/// The cases of ../shared/data/regulation/worked-examples.md that concern limits, on the shipped tables. Compositions of oils are the
/// inputs that the cases give, as a maker's analysis of the lot.
/// </summary>
public class WorkedLimitTests
{
    private const string Eugenol = "97-53-0";
    private const string Isoeugenol = "97-54-1";
    private const string MethylEugenol = "93-15-2";

    [Fact]
    public void Case3_CitralInLeaveOnHairOil_PassesCategory7B()
    {
        var lemongrass = Oil("lemongrass lot", Analysed("neral", "106-26-3", 32), Analysed("geranial", "141-27-5", 42), Analysed("rest", "123-35-3", 26));

        var citral = Finding("hair-oil-leave-on", "ifra-citral-7a", (lemongrass, 0.05m));

        (citral.Status, citral.Amount.High, citral.Limit).ShouldBe((LimitStatus.Within, 0.037m, 0.2m));
    }

    [Fact]
    public void Case4_SodiumBenzoateInLeaveOn_PassesAsAcid()
    {
        var benzoate = Finding("body-lotion", "eu-v-1-leave-on", (Seed("sodium-benzoate"), 0.55m));

        (benzoate.Status, decimal.Round(benzoate.Amount.High, 4)).ShouldBe((LimitStatus.Near, 0.4661m));

        // The case prints 0.590; the largest that passes is rounded down at the fourth decimal: 0.5 × 144.10/122.12 = 0.58999….
        decimal.Round(benzoate.LargestPassing.Single().Percent, 3).ShouldBe(0.590m);
    }

    [Fact]
    public void Case5_PotassiumSorbate_FailsAsAcid()
    {
        var sorbate = Finding("face-cream", "eu-v-4", (Seed("potassium-sorbate"), 0.9m));

        (sorbate.Status, decimal.Round(sorbate.Amount.High, 4)).ShouldBe((LimitStatus.Exceeded, 0.6718m));
        decimal.Round(sorbate.LargestPassing.Single().Percent, 3).ShouldBe(0.804m);
    }

    [Theory]
    [InlineData("shampoo-liquid", "eu-iii-98-rinse-off-hair", 2.5, LimitStatus.Near)]
    [InlineData("body-lotion", "eu-iii-98-body-lotion", 0.8, LimitStatus.Exceeded)]
    [InlineData("face-cream", "eu-iii-98-other", 2.0, LimitStatus.Near)]
    public void Case6_SalicylicAcid_DependsOnTheProduct(string use, string limit, double percent, LimitStatus expected)
    {
        var salicylic = Finding(use, limit, (Seed("salicylic-acid"), (decimal)percent));

        salicylic.Status.ShouldBe(expected);
        salicylic.Warning.ShouldNotBeNull().ShouldContain("under 3 years");
    }

    [Fact]
    public void Case7_PressedCitrusOils_AddUpInMassageOilAndNotInSoap()
    {
        (Ingredient, decimal)[] two = [(Seed("bergamot-oil"), 0.2m), (Seed("lime-oil-expressed"), 0.3m)];
        (Ingredient, decimal)[] three = [.. two, (Seed("lemon-oil"), 0.2m)];

        var pass = Finding("body-oil", "phototoxic", two);
        (pass.Status, decimal.Round(pass.Amount.High, 4)).ShouldBe((LimitStatus.Near, 0.9286m));
        var fail = Finding("body-oil", "phototoxic", three);
        (fail.Status, decimal.Round(fail.Amount.High, 4)).ShouldBe((LimitStatus.Exceeded, 1.0286m));
        Findings("soap-bar", three).ShouldNotContain(f => f.Id == "phototoxic");
    }

    [Fact]
    public void Case9_MethylEugenolThroughRoseOil_FailsByLawAndByTheTradeStandard()
    {
        var rose = Oil("rose lot", Analysed("methyl eugenol", MethylEugenol, 2), Analysed("rest", "106-22-9", 98));

        var cream = Findings("face-cream", (rose, 0.02m)).Where(f => f.Contributions[0].ShareOfIngredient.High == 2).ToDictionary(f => (f.Authority, f.Limit));
        cream[(Authority.Eu, 0.0002m)].Status.ShouldBe(LimitStatus.Exceeded);
        cream[(Authority.Eu, 0.0002m)].Amount.High.ShouldBe(0.0004m);
        cream[(Authority.Eu, 0.0002m)].LargestPassing.Single().Percent.ShouldBe(0.01m);
        cream[(Authority.Ifra, 0.00021m)].Status.ShouldBe(LimitStatus.Exceeded);

        var soap = Findings("soap-bar", (rose, 0.02m)).Where(f => f.Contributions[0].ShareOfIngredient.High == 2).ToDictionary(f => (f.Authority, f.Limit));
        soap[(Authority.Eu, 0.001m)].LargestPassing.Single().Percent.ShouldBe(0.05m);

        // The case prints 0.085.
        soap[(Authority.Ifra, 0.0017m)].LargestPassing.Single().Percent.ShouldBe(0.085m);
    }

    [Theory]
    [InlineData("soap-bar", 2.0, "ifra-eugenol-9", 1.64, LimitStatus.Within)]
    [InlineData("body-lotion", 0.5, "ifra-eugenol-5a", 0.41, LimitStatus.Within)]
    [InlineData("lip-balm", 0.6, "ifra-eugenol-1", 0.492, LimitStatus.Exceeded)]
    public void Case10_EugenolOfCloveOil_DependsOnTheProduct(string use, double percent, string limit, double amount, LimitStatus expected)
    {
        var eugenol = Finding(use, limit, (Clove, (decimal)percent));

        (eugenol.Status, eugenol.Amount.High).ShouldBe((expected, (decimal)amount));
    }

    [Fact]
    public void Case10_IsoeugenolOfCloveOilInSoap_PassesTheLaw() =>
        Findings("soap-bar", (Clove, 2m)).Single(f => f.Authority == Authority.Eu && f.Limit == 0.02m).Amount.High.ShouldBe(0.004m);

    [Theory]
    [InlineData("face-cream", "eu-iii-376-other", LimitStatus.Near)]
    [InlineData("body-lotion", "eu-iii-376-body-lotion", LimitStatus.Exceeded)]
    public void Extra_RetinylPalmitate_CountsAsRetinolEquivalents(string use, string limit, LimitStatus expected)
    {
        var palmitate = Finding(use, limit, (Pure("retinyl palmitate", "79-81-2"), 0.5m));

        (palmitate.Status, decimal.Round(palmitate.Amount.High, 4)).ShouldBe((expected, 0.2729m));
        palmitate.Warning.ShouldNotBeNull().ShouldContain("Contains Vitamin A");
    }

    private static Ingredient Clove => Oil(
        "clove lot",
        Analysed("eugenol", Eugenol, 82), Analysed("eugenyl acetate", "93-28-7", 8), Analysed("beta-caryophyllene", "87-44-5", 6),
        Analysed("isoeugenol", Isoeugenol, 0.2m), Analysed("rest", "123-35-3", 3.8m));

    private static Ingredient Seed(string id) => SeedCatalogue.Ingredient(id);

    private static Ingredient Pure(string name, string cas) => Material(name, IngredientKind.Active, cas);

    private static LimitFinding Finding(string use, string id, params (Ingredient Ingredient, decimal Percent)[] lines) =>
        Findings(use, lines).Single(f => f.Id == id);

    private static IReadOnlyList<LimitFinding> Findings(string use, params (Ingredient Ingredient, decimal Percent)[] lines) => LimitFindings.Of(new RegulatedFormula(
        [.. lines.Select(l => new RegulatedLine(l.Ingredient.Id, l.Percent, l.Ingredient))],
        SeedCatalogue.Release, SeedCatalogue.Release.FindUse(use), [Authority.Eu, Authority.Ifra, Authority.Opinion], new DateOnly(2026, 11, 25)));
}
