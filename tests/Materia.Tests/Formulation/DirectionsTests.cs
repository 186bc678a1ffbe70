using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.Directing;
using Materia.Formulation.OwnMaterials;
using Materia.Formulation.Sections;
using Materia.Tests.Chemistry;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

/// <summary>Directions on the shipped catalogue.</summary>
public sealed class DirectionsTests
{
    private static readonly DirectionTopic[] Topics = Enum.GetValues<DirectionTopic>();

    public static TheoryData<string> Uses => [.. SeedCatalogue.Release.Content.Uses.Select(u => u.Id)];

    [Theory]
    [MemberData(nameof(Uses))]
    public void Evaluate_EveryUse_SpeaksOfEveryTopicWithSourceAndGrade(string use)
    {
        var directions = Directions(Of(Percent("olive-oil", 80), Percent("beeswax", 20)) with { Use = use });

        directions.Sentences.Select(s => s.Topic).Distinct().ShouldBe(Topics);
        directions.Sentences.ShouldAllBe(s => SeedCatalogue.Release.FindSource(s.Source) != null && s.Evidence == Evidence.CommonPractice);
        directions.Warnings.ShouldBeEmpty();
    }

    [Fact]
    public void Uses_OfTheTable_AreThoseOfTheCatalogue() =>
        UseDirections.Uses.Order().ShouldBe(SeedCatalogue.Release.Content.Uses.Select(u => u.Id).Order());

    [Fact]
    public void Evaluate_AnySentence_GivesNoNumberOfMonthsOrYears() =>
        Uses.SelectMany(u => Directions(Mask with { Use = u.Data }).Sentences)
            .ShouldAllBe(s => !System.Text.RegularExpressions.Regex.IsMatch(s.Text, @"\d+\s*(months?|years?)"));

    [Fact]
    public void Evaluate_Mask_AddsWhatItsFatsClayAndOilsCallFor()
    {
        var sentences = Directions(Mask).Sentences;

        sentences.Single(s => s.Text.StartsWith("Nothing in it makes the fat mix", StringComparison.Ordinal)).Ingredients.ShouldBe(["cupuacu-butter", "flaxseed-oil"]);
        sentences.Single(s => s.Text.Contains("clay is still moist", StringComparison.Ordinal)).Ingredients.ShouldBe(["kaolin"]);
        sentences.Single(s => s.RestsOn.Contains("limits")).Ingredients.ShouldBe(["lavender-oil"]);
        sentences.Single(s => s.Text.StartsWith("Its fats take up oxygen", StringComparison.Ordinal)).Ingredients[0].ShouldBe("flaxseed-oil");
        sentences.ShouldContain(s => s.Topic == DirectionTopic.Storage && s.Text.Contains("wet hands", StringComparison.Ordinal));
    }

    [Fact]
    public void Evaluate_Cautions_AreThoseOfTheSectionThatConcernUse()
    {
        var evaluation = Evaluate(Mask);
        var cautions = evaluation.Of(Materia.Formulation.Directing.Directions.Section)!.Cautions;

        cautions.ShouldBeSubsetOf(evaluation.Of(ProductSections.Cautions)!);
        cautions.Select(c => c.Hazard).ShouldContain("slipping");
        cautions.Select(c => c.Hazard).ShouldContain("stains");
        cautions.Select(c => c.Hazard).ShouldContain("eyes");
        cautions.Select(c => c.Hazard).ShouldNotContain("burns by hot fat");
        cautions.Select(c => c.Hazard).ShouldNotContain("dust with respirable quartz");
    }

    [Fact]
    public void Evaluate_CitrusOilLeftOn_WarnsOfTheSun() =>
        Directions(Of(Percent("bergamot-oil", 1), Balance("olive-oil")) with { Use = "body-oil" }).Cautions.Select(c => c.Hazard).ShouldContain("burns by sunlight");

    [Fact]
    public void Evaluate_WaterWithoutPreservative_IsForTheSameDay()
    {
        var water = new OwnMaterial { Name = "Well water", InciName = "Aqua", Kind = IngredientKind.Solvent };
        Directions(Of(Own(water, 70), Percent("olive-oil", 30)) with { Use = "body-lotion" }).Sentences
            .Single(s => s.Topic == DirectionTopic.Discard && s.RestsOn.Contains("preservation")).Text.ShouldContain("the same day");
    }

    [Fact]
    public void Evaluate_ButterFirmAtRoomTemperature_IsMeltedInTheHands() =>
        Directions(Of(Percent("cocoa-butter", 100)) with { Use = "body-butter-leave-on" }).Sentences
            .ShouldContain(s => s.Topic == DirectionTopic.Application && s.RestsOn.Contains("melting"));

    [Fact]
    public void Evaluate_NoUse_StillSaysHowToKeepItAndAsksForTheUse()
    {
        var directions = Directions(Mask with { Use = null });

        directions.Sentences.Select(s => s.Topic).ShouldContain(DirectionTopic.Discard);
        directions.Sentences.Select(s => s.Topic).ShouldNotContain(DirectionTopic.Amount);
        directions.Warnings.ShouldHaveSingleItem().ShouldContain("GET /v1/uses");
    }

    private static Formula Mask => Of(Percent("cupuacu-butter", 40), Percent("kaolin", 8), Percent("lavender-oil", 1), Balance("flaxseed-oil")) with { Use = "hair-mask-rinse-off" };

    private static Directions Directions(Formula formula) => Evaluate(formula).Of(Materia.Formulation.Directing.Directions.Section)!;

    private static Evaluation Evaluate(Formula formula)
    {
        var normalisation = NormalisedFormula.Create(formula, SeedCatalogue.Release);
        normalisation.Faults.ShouldBeEmpty();
        return Evaluator.Evaluate(normalisation.Formula!, SeedCatalogue.Release, new() { Sections = [Materia.Formulation.Directing.Directions.Section, ProductSections.Cautions] });
    }
}
