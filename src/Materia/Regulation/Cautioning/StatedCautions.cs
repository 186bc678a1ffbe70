using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Cautioning;

/// <summary>Cautions that rest on statements of the catalogue: families of allergens, phototoxic limits, and what records and product types say.</summary>
internal static class StatedCautions
{
    public static IEnumerable<CautionFinding> Of(CautionedFormula formula) =>
        Families(formula).Concat(Phototoxic(formula)).Concat(OfUse(formula)).Concat(OfRecords(formula));

    private static IEnumerable<CautionFinding> Families(CautionedFormula formula) => formula.Parts
        .Where(p => p.Ingredient?.Origin is not null)
        .SelectMany(p => p.Ingredient!.Origin!.AllergenFamilies.Select(family => (Family: family, Part: p)))
        .GroupBy(p => p.Family)
        .OrderBy(g => g.Key)
        .Select(g => Finding(
            $"allergy to {Words(g.Key)}", $"people who are allergic to {Words(g.Key)}", "in making and in use",
            g.Key == AllergenFamily.LatexRelated
                ? "Say on the label what it is made from; people who react to latex can react to it too. Refined grades hold little protein, but none can be promised to hold none."
                : "Name it in plain words beside the ingredient list, since few know the Latin name, and do not use it on anyone who reacts to it. Refined grades hold little protein, but none can be promised to hold none.",
            g.First().Part.Ingredient!.Origin!, [.. g.Select(p => p.Part.Line).Distinct(StringComparer.Ordinal)]));

    // A limit against burns by sunlight that names a material of the formula speaks for it, whether it is kept or not.
    private static IEnumerable<CautionFinding> Phototoxic(CautionedFormula formula) => formula.Formula.Release.Content.Limits
        .Where(l => l.Kind == LimitKind.Phototoxic && formula.MayStayOn)
        .Select(l => (Limit: l, Sum: formula.Formula.Rollup.Of(l)))
        .Where(l => l.Sum.Contributions.Count > 0)
        .GroupBy(l => l.Limit.Source, StringComparer.Ordinal)
        .Select(g => Finding(
            UsingCautions.Sunlight, "whoever uses it", "in use, on skin that sees the sun",
            "Keep the sum of share over limit at or below 1 (see limits), keep treated skin out of the sun and of tanning lamps, or use grades freed of furocoumarins.",
            g.First().Limit, [.. g.SelectMany(l => l.Sum.Contributions.Select(c => c.Line.Name)).Distinct(StringComparer.Ordinal)]));

    private static IEnumerable<CautionFinding> OfUse(CautionedFormula formula)
    {
        if (formula.Use is { } use && (use.Caution ?? use.Note) is { } text)
        {
            yield return Finding($"{use.Name.ToLowerInvariant()}: what to know", "whoever uses it", "in use", text, use, []);
        }
    }

    // The record of what was bought only: what its parts are like by themselves, such as dusty, need not hold of the mixture.
    private static IEnumerable<CautionFinding> OfRecords(CautionedFormula formula) => formula.Formula.Lines
        .Where(l => l.Percent > 0)
        .SelectMany(l => l.Ingredient.Cautions.Select(c => (Line: l.Name, Caution: c)))
        .GroupBy(c => c.Caution.Text, StringComparer.Ordinal)
        .Select(g => Finding(
            "from the ingredient's record", "whoever makes or uses it", "in making and in use", g.Key, g.First().Caution, [.. g.Select(c => c.Line).Distinct(StringComparer.Ordinal)]));

    private static CautionFinding Finding(string hazard, string who, string when, string whatToDo, Statement statement, IReadOnlyList<string> ingredients) => new()
    {
        Hazard = hazard,
        Who = who,
        When = when,
        WhatToDo = whatToDo,
        Ingredients = ingredients,
        Source = statement.Source,
        Locator = statement.Locator,
        CheckIn = statement.CheckIn,
        Evidence = statement.Evidence,
    };

    private static string Words(AllergenFamily family) => family switch
    {
        AllergenFamily.TreeNut => "tree nuts",
        AllergenFamily.Peanut => "peanut",
        AllergenFamily.Soy => "soya",
        AllergenFamily.Gluten => "cereals with gluten",
        AllergenFamily.Sesame => "sesame",
        AllergenFamily.Mustard => "mustard",
        AllergenFamily.Wool => "wool wax",
        AllergenFamily.Bee => "bee products",
        _ => "latex",
    };
}
