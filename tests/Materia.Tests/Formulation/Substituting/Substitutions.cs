using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.Optimising;
using Materia.Formulation.Substituting;
using Materia.Tests.Chemistry;

namespace Materia.Tests.Formulation.Substituting;

/// <summary>Makes and sends requests for substitutions.</summary>
internal static class Substitutions
{
    /// <summary>A day on which nothing changes in the rules.</summary>
    public static readonly DateOnly Day = new(2026, 11, 25);

    /// <summary>A formula of lines by percentage.</summary>
    public static Materia.Formulation.Formula Formula(params (string Id, decimal Percent)[] lines) =>
        new() { Lines = [.. lines.Select(l => new FormulaLine { Ingredient = l.Id, Percent = l.Percent })] };

    /// <summary>A request with a pantry, or with the whole catalogue when it is empty; enough time on a busy machine.</summary>
    public static SubstitutionRequest Request(Materia.Formulation.Formula formula, string without, params string[] pantry) => new()
    {
        Formula = formula,
        Without = [without],
        Pantry = pantry.Length == 0 ? null : [.. pantry.Select(id => new PantryItem { Ingredient = id })],
        TimeBudget = 10,
    };

    /// <summary>The answer to a request that must be taken.</summary>
    public static Substitution Answer(SubstitutionRequest request, Release? release = null)
    {
        var (answer, faults) = SubstitutionFinder.Find(request, release ?? SeedCatalogue.Release, Day, TimeProvider.System, TestContext.Current.CancellationToken);
        faults.ShouldBeEmpty();
        return answer!;
    }

    /// <summary>The faults of a request that must be refused.</summary>
    public static IReadOnlyList<FormulaFault> Faults(SubstitutionRequest request)
    {
        var (answer, faults) = SubstitutionFinder.Find(request, SeedCatalogue.Release, Day, TimeProvider.System, TestContext.Current.CancellationToken);
        answer.ShouldBeNull();
        return faults;
    }

    /// <summary>The share of a material in a formula.</summary>
    public static decimal Share(this Materia.Formulation.Formula formula, string id) => formula.Lines.Where(l => l.Ingredient == id).Sum(l => l.Percent ?? 0);
}
