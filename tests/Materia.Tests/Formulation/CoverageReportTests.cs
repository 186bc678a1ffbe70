using Materia.Formulation;
using Materia.Formulation.Sections;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class CoverageReportTests
{
    [Fact]
    public void Evaluate_MaterialWithoutFattyAcids_IsNamedWithItsShare()
    {
        var unknown = Own(new() { Name = "Mystery butter", Kind = Materia.Catalogue.IngredientKind.Butter }, 20);

        var coverage = Coverage(Of(Percent("olive-oil", 60), unknown, Percent("kaolin", 20)), "fattyAcids");

        // Kaolin holds no fat, so 60 of 80 parts have data.
        coverage.Share.ShouldNotBeNull().ShouldBe(0.75, 1e-6);
        var missing = coverage.Missing.ShouldHaveSingleItem();
        (missing.Ingredient, missing.Own).ShouldBe((null, "Mystery butter"));
        missing.Percent.ShouldBe(20, 1e-9);
    }

    [Fact]
    public void Evaluate_AllDataThere_MissesNothing()
    {
        var coverage = Coverage(Of(Percent("olive-oil", 60), Percent("shea-butter", 40)), "iodineValue");

        coverage.Share.ShouldBe(1);
        coverage.Missing.ShouldBeEmpty();
    }

    [Fact]
    public void Evaluate_NothingConcerned_HasNoShare()
    {
        var coverage = Coverage(Of(Percent("kaolin", 100)), "iodineValue");

        coverage.Share.ShouldBeNull();
        coverage.Missing.ShouldBeEmpty();
    }

    [Fact]
    public void Evaluate_CatalogueIngredientWithoutData_IsNamedByItsId() =>
        Coverage(Of(Percent("olive-oil", 60), Percent("beeswax", 40)), "saponificationValue").Missing.ShouldHaveSingleItem().Ingredient.ShouldBe("beeswax");

    private static SectionCoverage Coverage(Formula formula, string section) =>
        Evaluator.Evaluate(Normalised(formula), TestCatalogue.Release, new() { Sections = [CoverageReport.Section] })
            .Of(CoverageReport.Section).ShouldNotBeNull().Sections.Single(s => s.Section == section);
}
