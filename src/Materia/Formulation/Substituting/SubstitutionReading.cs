using Materia.Catalogue;
using Materia.Formulation.Normalising;
using Materia.Formulation.Optimising;
using Materia.Formulation.OwnMaterials;

namespace Materia.Formulation.Substituting;

/// <summary>Checks a request and names every fault with its place.</summary>
internal static class SubstitutionReading
{
    private const int UsualLimit = 3;
    private const int MostLimit = 10;
    private const int MostWithout = 5;

    /// <summary>The case, or all faults.</summary>
    public static (SubstitutionCase? Case, IReadOnlyList<FormulaFault> Faults) Read(SubstitutionRequest request, Release release, DateOnly asOf)
    {
        var faults = new FaultList();
        SearchRules.Check(request.Limit, MostLimit, request.TimeBudget, faults);
        var exclude = Exclusions.Read(request.Exclude, "/exclude", release, faults);
        if (request.Formula is not { } submitted)
        {
            faults.Add("/formula", "Give the formula as it is with everything in it, as POST /v1/evaluations takes it.");
            return (null, faults.All);
        }

        CheckLockedSum(request, faults);
        var normalisation = NormalisedFormula.Create(submitted, release);
        foreach (var fault in normalisation.Faults)
        {
            faults.Add(fault with { Pointer = "/formula" + fault.Pointer });
        }

        if (normalisation.Formula is not { } formula)
        {
            return (null, faults.All);
        }

        List<string> notes = [.. formula.Notes];
        var without = Without(request, formula, release, faults);
        var locked = Locked(request, formula, without, release, faults);
        var pantry = request.Pantry is { } items ? Items(items, without, release, faults, notes) : release.Content.Ingredients.Select(i => new MaterialColumn(i)).ToList();
        notes.AddRange(formula.Lines.Where(l => exclude.Holds(l.Ingredient) && !without.Contains(l.Material)).Select(l => $"\"{l.Material}\" is in the formula and stays, although exclude names it; add it to without to have it replaced."));
        if (faults.Any)
        {
            return (null, faults.All);
        }

        // Another grade of what is missing, or of what stays, is no answer to somebody who searches the whole catalogue; a pantry may name it.
        var held = request.Pantry is null ? formula.Lines.Select(l => l.Ingredient.InciName()).OfType<string>().ToHashSet(StringComparer.OrdinalIgnoreCase) : [];
        var candidates = pantry.Where(c => !without.Contains(c.Name) && !exclude.Holds(c) && (formula.Lines.Any(l => l.Material == c.Name) || c.Ingredient.InciName() is not { } inci || !held.Contains(inci))).ToList();
        if (candidates.Count == 0)
        {
            faults.Add("/exclude", "The exclusions leave nothing that could come in. Exclude less, or put more into the pantry.");
            return (null, faults.All);
        }

        return (new SubstitutionCase
        {
            Release = release,
            Submitted = submitted,
            Formula = formula,
            Without = [.. without.OrderByDescending(id => formula.Lines.Where(l => l.Material == id).Sum(l => l.Percent)).ThenBy(id => id, StringComparer.Ordinal)],
            Locked = locked,
            Candidates = candidates,
            Own = (request.Pantry ?? []).Select(p => p.Own).OfType<OwnMaterial>().Where(o => o.Name is not null).ToDictionary(o => o.Name!, StringComparer.Ordinal),
            Exclude = exclude,
            Limit = request.Limit ?? UsualLimit,
            AsOf = asOf,
            Notes = notes,
        }, []);
    }

    private static void CheckLockedSum(SubstitutionRequest request, FaultList faults)
    {
        var lines = request.Formula!.Lines;
        var chosen = Enumerable.Range(0, lines.Count).Where(i => request.Locked.Any(l => l.Index == i || (l.Material is not null && (l.Material == lines[i].Ingredient || l.Material == lines[i].Own?.Name))));
        if (chosen.Sum(i => Math.Clamp(lines[i].Percent ?? 0, 0, 1000)) is > 100 and var sum)
        {
            faults.Add("/locked", $"The locked lines add up to {Fault.Text(sum)} %, which leaves nothing for the others. Unlock some, or correct their percentages.");
        }
    }

    private static List<string> Without(SubstitutionRequest request, NormalisedFormula formula, Release release, FaultList faults)
    {
        if (request.Without.Count is 0 or > MostWithout)
        {
            faults.Add("/without", $"Name 1 to {MostWithout} ingredients of the formula to do without, such as \"mango-butter\".");
            return [];
        }

        var found = new List<string>();
        for (var i = 0; i < request.Without.Count; i++)
        {
            var id = release.FindPresentId(request.Without[i]) ?? request.Without[i];
            if (found.Contains(id))
            {
                faults.Add($"/without/{i}", $"\"{Fault.Shorten(id)}\" is named twice. Name it once.");
            }
            else if (formula.Lines.Any(l => l.Material == id))
            {
                found.Add(id);
            }
            else if (formula.Lines.FirstOrDefault(l => l.Parts.Any(p => p.Ingredient.Id == id)) is { } mixture)
            {
                faults.Add($"/without/{i}", $"\"{Fault.Shorten(id)}\" is a part of the mixture \"{Fault.Shorten(mixture.Material)}\". Put the mixture's parts on lines of their own, or do without the whole mixture.");
            }
            else
            {
                faults.Add($"/without/{i}", $"\"{Fault.Shorten(id)}\" is not in the formula. It holds {Fault.Words(formula.Lines.Select(l => l.Material).Distinct().Take(20))}.");
            }
        }

        return found;
    }

    private static bool[] Locked(SubstitutionRequest request, NormalisedFormula formula, List<string> without, Release release, FaultList faults)
    {
        var locked = new bool[formula.Lines.Count];
        for (var i = 0; i < request.Locked.Count; i++)
        {
            var choice = request.Locked[i];
            var id = choice.Material is { } named ? release.FindPresentId(named) ?? named : null;
            var lines = Enumerable.Range(0, locked.Length).Where(l => l == choice.Index || (id is not null && formula.Lines[l].Material == id)).ToList();
            if (lines.Count == 0)
            {
                faults.Add($"/locked/{i}", choice.Index is { } index
                    ? $"There is no line {index}; the lines are counted from 0 to {locked.Length - 1}."
                    : $"\"{Fault.Shorten(id ?? string.Empty)}\" is not in the formula. Lock a line by its place, or by a material that the formula holds.");
            }

            foreach (var line in lines)
            {
                locked[line] = true;
                if (without.Contains(formula.Lines[line].Material))
                {
                    faults.Add($"/locked/{i}", $"\"{Fault.Shorten(formula.Lines[line].Material)}\" is to be done without and cannot keep its share. Take it out of locked or out of without.");
                }
            }
        }

        return locked;
    }

    private static IReadOnlyList<MaterialColumn> Items(IReadOnlyList<PantryItem> items, List<string> without, Release release, FaultList faults, List<string> notes)
    {
        if (items.Count == 0)
        {
            faults.Add("/pantry", "The pantry is empty. Name what is at hand, or leave pantry out to search the whole catalogue.");
        }

        var columns = Pantry.Read(items, "/pantry", release, faults, notes);
        for (var i = 0; i < columns.Count && columns.Count == items.Count; i++)
        {
            if (without.Contains(columns[i].Name))
            {
                faults.Add($"/pantry/{i}", $"\"{Fault.Shorten(columns[i].Name)}\" is to be done without, and the pantry holds it. Take it out of one of the two.");
            }
        }

        return columns;
    }
}
