using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Preserving;

/// <summary>Finds the antioxidants of a formula and how much of them the fats get.</summary>
internal static class AntioxidantsPresent
{
    public static IReadOnlyList<AntioxidantFinding> Of(IReadOnlyList<FormulaPart> parts)
    {
        var lipids = parts.Where(p => p.Kind is { } kind && Kinds.IsLipid(kind)).Sum(p => p.Share.Typical);
        return [.. parts
            .Where(p => p.Kind == IngredientKind.Antioxidant)
            .OrderByDescending(p => p.Share.Typical)
            .Select(p => new AntioxidantFinding(
                p.Component,
                p.Part.Name,
                ExactShare.Trim(p.Share.Typical),
                lipids == 0 ? null : decimal.Round(p.Share.Typical / lipids * 1_000_000),
                Note(p, lipids == 0 ? null : p.Share.Typical / lipids * 1_000_000)))];
    }

    // Studied levels of tocopherols: see the method tocopherol-sum, whose sources these sentences rest on.
    private static string Note(FormulaPart part, decimal? level) => !part.Inci.Contains("TOCOPHEROL", StringComparison.Ordinal)
        ? "Follow the usage level of its record; it slows rancidity of fresh fat and does not bring back what is rancid."
        : level switch
        {
            null => "There is no fat in the formula that it could protect.",
            < 100 => "Below 100 mg/kg of the fats: little protection.",
            > 2000 => "Above 2000 mg/kg of the fats, more than any studied optimum: more does not help and may promote oxidation. Convert by the assay of what was bought.",
            _ => "Studied optima lie between 100 and 1000 mg/kg of the fats and differ between studies. Convert by the assay of what was bought.",
        };
}
