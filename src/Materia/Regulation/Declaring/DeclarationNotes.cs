using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Declaring;

/// <summary>What must be known to use a drafted ingredient list.</summary>
/// <param name="Texts">The notes, as sentences.</param>
/// <param name="Rules">The numbers of the rules that they rest on.</param>
internal sealed record DeclarationNotes(IReadOnlyList<string> Texts, IReadOnlyList<string> Rules)
{
    private static readonly string[] MayBeNano = ["ZINC OXIDE", "TITANIUM DIOXIDE", "CI 77891", "SILICA", "CARBON BLACK", "CI 77266", "CI 77267"];
    private static readonly string[] Lyes = ["SODIUM HYDROXIDE", "POTASSIUM HYDROXIDE"];

    public static DeclarationNotes Of(RegulatedFormula formula, LabelItems items, Authority law)
    {
        var american = law == Authority.Us;
        List<string> texts =
        [
            "A draft: the responsible person and a qualified safety assessor decide what is printed.",
            "Shares are those of the materials as they are added; water that evaporates or is taken up in making is not guessed at.",
        ];
        List<string> rules = american ? ["US-ING-01", "US-ING-09"] : ["EU-ING-01", "EU-ING-02", "EU-ING-17", "EU-ING-18"];
        texts.Add(american
            ? "Incidental ingredients without effect in the product were not told apart; leave out what is one."
            : "Impurities, and technical aids that are no longer in the product, are not ingredients; leave out a line that is only that.");
        if (law == Authority.Gb)
        {
            rules.AddRange(["UK-03", "UK-07"]);
            texts.Add("Great Britain: the order follows the European rules, the allergens are those of the earlier list. A label for Northern Ireland follows the European market.");
        }

        if (american)
        {
            rules.Add("US-ALG-01");
            texts.Add("United States: no fragrance allergens are appended, since no duty to name them was found in force.");
        }

        if (items.HasPerfume)
        {
            texts.Add(american
                ? "Essential oils stand together as the word for fragrance, which the rule allows; they may be named one by one instead, see alternative."
                : $"Essential oils count as raw materials of perfume and stand together as {LabelItems.PerfumeWord(law, formula.Use)}, in the place of their sum. An oil that is in the product for something other than its scent is named itself, see alternative.");
        }

        if (formula.Lines.Any(l => Names(l, MayBeNano, formula.Release)) && !american)
        {
            rules.Add("EU-ING-08");
            texts.Add("Zinc oxide, titanium dioxide, silica and carbon black are also sold as nanomaterials. Ask the supplier; the name of such a grade carries (nano), and it is not written here unless the material's own name has it.");
        }

        if (formula.Lines.Any(l => Names(l, Lyes, formula.Release)) && formula.Lines.Any(l => l.Ingredient.Kind is IngredientKind.Oil or IngredientKind.Butter or IngredientKind.FattyAcid))
        {
            rules.Add(american ? "US-SOAP-01" : "EU-ING-22");
            texts.Add(american
                ? "Alkali and fat make soap: true soap without cosmetic claims is outside these rules; with claims it is a cosmetic."
                : "Alkali and fat make soap: the list names what was added. It may name the soaps that came of it instead, in one way on the whole label.");
        }

        if (formula.Use is null)
        {
            texts.Add("The formula does not say what it is for: it was taken as a product that stays on.");
        }

        return new DeclarationNotes(texts, rules);
    }

    private static bool Names(RegulatedLine line, string[] names, Release release) =>
        MaterialPartShare.Of(line.Ingredient, release).Any(p =>
            names.Contains(p.InciName?.ToUpperInvariant() ?? string.Empty, StringComparer.Ordinal)
            || p.Ingredient?.Names.Any(n => n.Kind == NameKind.Inci && names.Contains(n.Text.ToUpperInvariant(), StringComparer.Ordinal)) == true);
}
