using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Allergens;

/// <summary>What the compositions leave open.</summary>
public sealed record CompositionGaps
{
    /// <summary>The materials, in the order of the formula.</summary>
    public required IReadOnlyList<UnaccountedMaterial> Items { get; init; }

    /// <summary>What follows from it.</summary>
    public required string Note { get; init; }

    /// <summary>Looks through a formula.</summary>
    public static CompositionGaps Of(RegulatedFormula formula)
    {
        var exposure = formula.Use?.Exposure ?? Exposure.LeaveOn;
        var counts = new int[formula.Lines.Count];
        foreach (var allergen in formula.Release.Content.Allergens.Where(a => !a.NaturalExtract))
        {
            Count(formula, allergen, exposure == Exposure.LeaveOn ? allergen.LeaveOnThreshold : allergen.RinseOffThreshold, counts);
        }

        var items = formula.Lines
            .Select((line, i) => (Line: line, Contents: formula.Contents[i], Allergens: counts[i]))
            .Where(m => m.Line.Percent > 0 && (m.Contents.Unaccounted > 0 || m.Contents.IsMixtureOfUnknownParts))
            .Select(m => new UnaccountedMaterial(
                m.Line.Name, Amount.Trim(m.Line.Percent * (m.Contents.IsMixtureOfUnknownParts ? 100 : m.Contents.Unaccounted) / 100), m.Allergens))
            .ToList();
        return new CompositionGaps
        {
            Items = items,
            Note = items.Count == 0
                ? "Every material that could hold fragrance substances is accounted for."
                : "Ask the supplier for the analysis of the lot and send it as an own material: what is not accounted for could hold restricted substances and allergens that no list here shows.",
        };
    }

    /// <summary>Counts an allergen for each material whose open part could be it above the threshold and of which no statement mentions it.</summary>
    private static void Count(RegulatedFormula formula, Allergen allergen, decimal threshold, int[] counts)
    {
        var sum = SubstanceRollup.Of(formula, allergen.Members, [], mayBeUnstated: true);
        if (sum.Amount.High + sum.NotExcluded <= threshold)
        {
            return;
        }

        for (var i = 0; i < counts.Length; i++)
        {
            counts[i] += sum.Unstated.Contains(formula.Lines[i].Name, StringComparer.Ordinal) ? 1 : 0;
        }
    }
}

/// <summary>A material whose composition is not wholly known.</summary>
/// <param name="Ingredient">What results call it.</param>
/// <param name="Percent">The share of the formula that nobody has accounted for [%].</param>
/// <param name="AllergensNotExcluded">How many allergens of the list could be in it above the threshold, which no statement mentions.</param>
public sealed record UnaccountedMaterial(string Ingredient, decimal Percent, int AllergensNotExcluded);
