using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Formulation;
using Materia.Formulation.Substituting;
using Materia.Regulation.Limits;

namespace Materia.Tests.Formulation.Substituting;

/// <summary>Requests made from a number, and what must hold of every answer.</summary>
internal static class GeneratedRequests
{
    /// <summary>A request: a formula of three to ten lines in tenths of a percent, one or two of them to do without, some locked.</summary>
    public static SubstitutionRequest Of(int seed, Release release)
    {
        // Reproducible numbers, not secrets.
#pragma warning disable CA5394
        var random = new Random(seed);
        var fats = release.Content.Ingredients.Where(i => i.Kind is IngredientKind.Butter or IngredientKind.Oil or IngredientKind.Wax or IngredientKind.FattyAlcohol).ToList();
        var others = release.Content.Ingredients.Where(i => i.Kind is IngredientKind.Clay or IngredientKind.Powder or IngredientKind.EssentialOil).ToList();
        var count = random.Next(3, 11);
        var chosen = Enumerable.Range(0, count).Select(i => (i < 2 || random.Next(5) > 0 ? fats[random.Next(fats.Count)] : others[random.Next(others.Count)]).Id).Distinct().ToList();
        var cuts = Enumerable.Range(0, chosen.Count - 1).Select(_ => random.Next(1, 1000)).Append(0).Append(1000).Order().ToList();
        var lines = chosen.Select((id, i) => new FormulaLine { Ingredient = id, Percent = (cuts[i + 1] - cuts[i]) / 10m }).Where(l => l.Percent > 0).ToList();
        var missing = lines.Take(random.Next(5) == 0 ? 2 : 1).Select(l => l.Ingredient!).ToList();
        return new SubstitutionRequest
        {
            Formula = new() { Use = release.Content.Uses[random.Next(release.Content.Uses.Count)].Id, Lines = lines },
            Without = missing,
            Locked = [.. lines.Where(l => !missing.Contains(l.Ingredient!) && random.Next(3) == 0).Select(l => new LineChoice(null, l.Ingredient))],
            Limit = 2,
            TimeBudget = 10,
        };
#pragma warning restore CA5394
    }

    /// <summary>What is wrong with an answer, in sentences; empty when nothing is.</summary>
    public static IReadOnlyList<string> Wrong(SubstitutionRequest request, Substitution answer, Release release, DateOnly day)
    {
        var wrong = new List<string>();
        foreach (var proposal in answer.Proposals)
        {
            if (proposal.Formula.Lines.Sum(l => l.Percent) != 100 || proposal.Formula.Lines.Any(l => l.Percent <= 0 || l.Percent % 0.1m != 0))
            {
                wrong.Add($"not 100 % in tenths: {string.Join(' ', proposal.Formula.Lines.Select(l => l.Percent))}");
            }

            if (proposal.Formula.Lines.Any(l => request.Without.Contains(l.Ingredient!)))
            {
                wrong.Add("what was to go is still there");
            }

            foreach (var locked in request.Locked.Where(k => Share(proposal.Formula, k.Material!) != Share(request.Formula!, k.Material!)))
            {
                wrong.Add($"{locked.Material} was locked and moved");
            }

            var normalised = NormalisedFormula.Create(proposal.Formula, release).Formula;
            if (normalised is null || LimitFindings.Of(normalised.Regulated(release, day)).Any(f => f.Status == LimitStatus.Exceeded && f.Authority != Authority.Opinion))
            {
                wrong.Add("outside a limit");
            }
        }

        return wrong;
    }

    private static decimal Share(Formula formula, string id) => formula.Lines.Where(l => l.Ingredient == id).Sum(l => l.Percent ?? 0);
}
