using Materia.Formulation;
using Materia.Formulation.OwnMaterials;

namespace Materia.Tests.Formulation;

/// <summary>Short ways to write formulas in tests.</summary>
internal static class Formulas
{
    public static FormulaLine Percent(string ingredient, decimal percent) => new() { Ingredient = ingredient, Percent = percent };

    public static FormulaLine Mass(string ingredient, decimal mass, string unit = "g") => new() { Ingredient = ingredient, Mass = mass, Unit = unit };

    public static FormulaLine Balance(string ingredient) => new() { Ingredient = ingredient, Balance = true };

    public static FormulaLine Own(OwnMaterial own, decimal percent = 100) => new() { Own = own, Percent = percent };

    public static Formula Of(params IReadOnlyList<FormulaLine> lines) => new() { Lines = lines };

    public static NormalisedFormula Normalised(Formula formula)
    {
        var result = NormalisedFormula.Create(formula, TestCatalogue.Release);
        result.Faults.ShouldBeEmpty();
        return result.Formula.ShouldNotBeNull();
    }

    public static IReadOnlyList<decimal> Percents(Formula formula) => [.. Normalised(formula).Lines.Select(l => l.Percent)];

    public static IReadOnlyList<FormulaFault> Faults(Formula formula)
    {
        var result = NormalisedFormula.Create(formula, TestCatalogue.Release);
        result.Formula.ShouldBeNull();
        result.Faults.ShouldNotBeEmpty();
        return result.Faults;
    }

    /// <summary>The one fault, which stands at <paramref name="pointer"/>.</summary>
    public static FormulaFault Fault(Formula formula, string pointer)
    {
        var fault = Faults(formula).ShouldHaveSingleItem();
        fault.Pointer.ShouldBe(pointer);
        return fault;
    }
}
