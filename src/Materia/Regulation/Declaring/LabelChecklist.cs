using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Declaring;

/// <summary>What a label must carry besides the ingredient list.</summary>
internal static class LabelChecklist
{
    private static readonly LabelParticular[] European =
    [
        new("Ingredient list", "The text above under the word Ingredients, on the outer packaging at least.", ParticularSupplier.Draft, "EU-ING-01"),
        new("Responsible person", "Name and address in the Union; with several addresses the one that holds the product file is highlighted.", ParticularSupplier.ResponsiblePerson, "EU-LAB-01"),
        new("Country of origin", "Where the product is imported into the Union.", ParticularSupplier.ResponsiblePerson, "EU-LAB-02"),
        new("Nominal content", "Weight or volume at packaging; not needed under 5 g or 5 ml, for free samples and for single uses.", ParticularSupplier.Maker, "EU-LAB-03"),
        new("Date of minimum durability", "Month and year with \"best used before the end of\" or the hourglass, where it is 30 months or less; a storage test shows how long.", ParticularSupplier.Maker, "EU-LAB-05"),
        new("Period after opening", "The open jar with months, where the minimum durability is more than 30 months and the product can spoil once open.", ParticularSupplier.SafetyAssessor, "EU-LAB-06"),
        new("Precautions", "Every warning below, and any others that the safety report asks for.", ParticularSupplier.SafetyAssessor, "EU-LAB-09"),
        new("Batch", "A batch number or a reference that finds the batch.", ParticularSupplier.Maker, "EU-LAB-10"),
        new("Function", "What the product is for, unless its presentation makes it clear.", ParticularSupplier.Maker, "EU-LAB-11"),
        new("Legibility", "All of it indelible, easily legible and visible.", ParticularSupplier.Maker, "EU-LAB-12"),
        new("Claims", "Nothing that the product does not do; claims need proof.", ParticularSupplier.ResponsiblePerson, "EU-LAB-15"),
    ];

    private static readonly LabelParticular[] American =
    [
        new("Ingredient list", "The text above, on an information panel.", ParticularSupplier.Draft, "US-ING-01"),
        new("Identity and net contents", "What the product is and how much is in the pack, in American and metric units, on the principal display panel.", ParticularSupplier.Maker, "US-LAB-01"),
        new("Name and place of business", "Of the maker, packer or distributor.", ParticularSupplier.ResponsiblePerson, "US-LAB-02"),
        new("Contact for adverse events", "A domestic address or phone number, or an electronic contact.", ParticularSupplier.ResponsiblePerson, "US-LAB-03"),
        new("Safety not determined", "The warning of 21 CFR 740.10, word for word, unless safety is adequately substantiated.", ParticularSupplier.SafetyAssessor, "US-WARN-01"),
    ];

    public static IReadOnlyList<LabelParticular> Of(RegulatedFormula formula, Authority law) => law switch
    {
        Authority.Us => IsFoamingBath(formula)
            ? [.. American, new("Foaming bath caution", "The caution of 21 CFR 740.17 on use, irritation of the urinary tract and children, unless the product is labelled for adults only.", ParticularSupplier.Maker, "US-WARN-03")]
            : American,
        Authority.Gb => [.. European.Select(p => p.Rule == "EU-LAB-01" ? p with { WhatToPrint = "Name and address in the United Kingdom.", Rule = "UK-01" } : p)],
        _ => European,
    };

    private static bool IsFoamingBath(RegulatedFormula formula) =>
        formula.Use?.Id.Contains("bath", StringComparison.Ordinal) == true && formula.Lines.Any(l => l.Ingredient.Kind == IngredientKind.Surfactant);
}
