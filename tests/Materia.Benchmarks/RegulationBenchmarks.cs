using BenchmarkDotNet.Attributes;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation;
using Materia.Regulation.Allergens;
using Materia.Regulation.Limits;

namespace Materia.Benchmarks;

/// <summary>Limits and allergens of a leave-on product of thirty lines, twelve of them essential oils.</summary>
[MemoryDiagnoser]
public class RegulationBenchmarks
{
    private const int Oils = 12;
    private const int Lines = 30;

    private Release release = null!;
    private RegulatedLine[] lines = null!;

    [GlobalSetup]
    public void Load()
    {
        release = SeedCatalogue.Load();
        var oils = release.Content.Ingredients.Where(i => i.Kind == IngredientKind.EssentialOil).Take(Oils).Select(i => new RegulatedLine(i.Id, 0.05m, i));
        var fats = release.Content.Ingredients.Where(i => i.Kind is IngredientKind.Butter or IngredientKind.Oil).Take(Lines - Oils).Select(i => new RegulatedLine(i.Id, 5.5m, i));
        lines = [.. oils, .. fats];
        _ = LimitsAlone();
        _ = AllergensAlone();
    }

    /// <summary>The roll-up with all that both sections make of it; they share one formula, as in an evaluation.</summary>
    [Benchmark]
    public int LimitsAndAllergens()
    {
        var formula = Formula();
        return LimitFindings.Of(formula).Count + AllergenFindings.Of(formula).Count;
    }

    [Benchmark]
    public IReadOnlyList<LimitFinding> LimitsAlone() => LimitFindings.Of(Formula());

    [Benchmark]
    public IReadOnlyList<AllergenFinding> AllergensAlone() => AllergenFindings.Of(Formula());

    private RegulatedFormula Formula() =>
        new(lines, release, release.FindUse("body-lotion"), [Authority.Eu, Authority.Ifra, Authority.Opinion], new DateOnly(2026, 11, 25));
}
