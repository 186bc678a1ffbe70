using System.Globalization;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation.Allergens;
using Materia.Regulation.Limits;

namespace Materia.Regulation.Declaring;

/// <summary>Drafts the ingredient list of a formula and what else its label must carry.</summary>
public static class DeclarationDraft
{
    /// <summary>Drafts a label under the law of the formula's market; European where none is among its authorities.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="limits">How it stands to the limits, whose warnings must be printed.</param>
    /// <param name="allergens">Its fragrance allergens.</param>
    /// <param name="explain">Whether to add the steps.</param>
    public static Declaration Of(RegulatedFormula formula, IReadOnlyList<LimitFinding> limits, IReadOnlyList<AllergenFinding> allergens, bool explain)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(allergens);
        var law = formula.Authorities.FirstOrDefault(a => a is Authority.Eu or Authority.Gb or Authority.Us, Authority.Eu);
        var items = LabelItems.Of(formula, law, namesOils: false);
        var entries = DeclarationList.Of(items, allergens, law);
        var oils = HasOils(formula) ? DeclarationList.Of(LabelItems.Of(formula, law, namesOils: true), allergens, law) : null;
        var groups = Groups(entries, law);
        var checklist = LabelChecklist.Of(formula, law);
        var warnings = LabelWarnings.Of(formula, limits, law);
        var notes = DeclarationNotes.Of(formula, items, law);
        return new Declaration
        {
            Text = Text(entries),
            Alternative = oils is null ? null : Text(oils),
            Law = law,
            Entries = entries,
            Groups = groups,
            Unresolved = items.Unresolved,
            Checklist = checklist,
            Warnings = warnings,
            Rules = LabelRules.Find(entries.SelectMany(e => e.Rules).Concat(groups.SelectMany(g => g.Rules)).Concat(checklist.Select(c => c.Rule)).Concat(notes.Rules)),
            Notes = notes.Texts,
            Method = Declaration.MethodKey,
            Steps = explain ? [.. entries.Select(e => Step(e, items))] : null,
        };
    }

    private static string Text(IEnumerable<DeclarationEntry> entries) => "Ingredients: " + string.Join(", ", entries.Select(e => e.Name));

    private static bool HasOils(RegulatedFormula formula) => formula.Lines.Any(l =>
        l.Percent > 0 && MaterialPartShare.Of(l.Ingredient, formula.Release).Any(p => p.Ingredient?.Kind == IngredientKind.EssentialOil));

    private static IReadOnlyList<DeclarationGroupNote> Groups(IReadOnlyList<DeclarationEntry> entries, Authority law)
    {
        var american = law == Authority.Us;
        return [.. entries.GroupBy(e => e.Group).Select(g => new DeclarationGroupNote(g.Key, g.First().Name, g.Count(), g.Key switch
        {
            DeclarationGroup.Ordered => american ? "Above 1 %: by falling weight, in this order." : "1 % and more: by falling weight, in this order.",
            DeclarationGroup.Free => american ? "1 % or less: any order after the others; here by falling weight." : "Below 1 %: any order after the others; here by falling weight.",
            DeclarationGroup.Allergen => "Allergens that must be named: any order after what stands by weight.",
            _ => "Colourants: any order after all others.",
        }, g.Key switch
        {
            DeclarationGroup.Ordered => [american ? "US-ING-01" : "EU-ING-02"],
            DeclarationGroup.Free => american ? ["US-ING-03", "US-ING-04"] : ["EU-ING-03", "EU-ING-04"],
            DeclarationGroup.Allergen => ["EU-ING-10"],
            _ => [american ? "US-ING-03" : "EU-ING-05"],
        }))];
    }

    private static DeclarationStep Step(DeclarationEntry entry, LabelItems items)
    {
        var item = items.All.Find(i => i.Name == entry.Name && entry.Group != DeclarationGroup.Allergen);
        var sum = item is null
            ? string.Join(" + ", entry.Ingredients)
            : string.Join(" + ", item.Lines.Select(l => $"{l.Line} {Number(l.Share.Typical ?? l.Share.High)}"));
        return new DeclarationStep(
            entry.Name,
            $"{sum} = {Number(entry.Share.Typical ?? entry.Share.High)} %",
            entry.Group switch
            {
                DeclarationGroup.Ordered => "By weight.",
                DeclarationGroup.Free => "In the free part.",
                DeclarationGroup.Colourant => "After all others, as a colourant.",
                _ => "Above the threshold of an allergen, so that it is named.",
            },
            entry.Rules);
    }

    private static string Number(decimal value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
