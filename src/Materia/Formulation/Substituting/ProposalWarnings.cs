using System.Globalization;
using Materia.Catalogue;
using Materia.Formulation.Optimising;
using Materia.Regulation.Limits;

namespace Materia.Formulation.Substituting;

/// <summary>What to look at before a proposal is made.</summary>
internal static class ProposalWarnings
{
    private const int MostCautions = 3;

    /// <summary>The warnings of a draft.</summary>
    public static IReadOnlyList<string> Of(SubstitutionCase request, SubstitutionSearch search, Draft draft)
    {
        var warnings = new List<string>();
        var came = Enumerable.Range(search.Lines.Count, search.Columns.Count - search.Lines.Count).Where(j => draft.Shares[j] > 0).Select(j => search.Columns[j]).ToList();
        var families = search.Lines.SelectMany(l => l.Ingredient.Origin?.AllergenFamilies ?? []).ToHashSet();
        var highest = search.Lines.Where(l => request.Without.Contains(l.Name)).SelectMany(l => l.Ingredient.Comedogenic).Select(n => n.High).DefaultIfEmpty(0).Max();
        foreach (var column in came)
        {
            foreach (var family in (column.Ingredient.Origin?.AllergenFamilies ?? []).Where(f => !families.Contains(f)))
            {
                warnings.Add($"{column.Name} brings an allergen family that the original does not have: {KebabCase<AllergenFamily>.Word(family)}.");
            }

            if (column.Ingredient.Comedogenic.Select(n => n.High).DefaultIfEmpty(0).Max() is var grade && grade > highest)
            {
                warnings.Add($"{column.Name} has a comedogenic grade of up to {grade}. {ComedogenicNote.Caveat}");
            }
            else if (request.Exclude.MaxComedogenic is not null && column.Ingredient.Comedogenic.Count == 0)
            {
                warnings.Add($"No comedogenic grade is held for {column.Name}; it was not shut out, since nobody tested it.");
            }

            warnings.AddRange(column.Ingredient.Cautions.Take(MostCautions).Select(c => $"{column.Name}: {c.Text}"));
        }

        for (var j = 0; j < draft.Shares.Length; j++)
        {
            var before = j < search.Lines.Count ? request.Formula.Lines[j].Percent : 0;
            if (draft.Shares[j] > before && UsageCeilings.Of(search.Columns[j].Ingredient, request.Formula.Use) is { } most && (double)draft.Shares[j] > most)
            {
                warnings.Add(string.Create(CultureInfo.InvariantCulture, $"{search.Columns[j].Name} at {draft.Shares[j]:0.#} % stands above its usual share of up to {most:0.##} %."));
            }
        }

        AddCoverage(search, draft, warnings);
        warnings.AddRange(search.Guard.All(draft.Shares)
            .Where(f => f.Status is LimitStatus.Exceeded or LimitStatus.Near || (f.Status == LimitStatus.Unknown && f.Contributions.Any(c => came.Exists(m => m.Name == c.Ingredient))))
            .Select(f => $"{f.Substance}: {KebabCase<LimitStatus>.Word(f.Status)} by {f.Instrument}{(f.Conditions is { } conditions ? $" ({conditions})" : string.Empty)}; see the limits section of an evaluation."));
        return warnings;
    }

    private static void AddCoverage(SubstitutionSearch search, Draft draft, List<string> warnings)
    {
        var count = search.Model.Figures.Count;
        var (values, covers, now) = (new double[count], new double[count], new double[count]);
        search.Model.At([.. Enumerable.Range(0, draft.Shares.Length).Select(j => j < search.Lines.Count ? (double)search.OriginalShare(j) : 0)], values, covers);
        search.Model.At([.. draft.Shares.Select(s => (double)s)], values, now);
        var less = Enumerable.Range(0, count).Where(f => now[f] < covers[f] - 0.001).Select(f => search.Model.Figures[f].Name).ToList();
        if (less.Count > 0)
        {
            warnings.Add($"Something that comes in has no figure for {string.Join(", ", less)}; there the comparison rests on less of the formula than the original's.");
        }
    }
}
