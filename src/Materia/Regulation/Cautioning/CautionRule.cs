using Materia.Catalogue;

namespace Materia.Regulation.Cautioning;

/// <summary>A caution with what calls for it.</summary>
/// <param name="Hazard">What may go wrong.</param>
/// <param name="Who">Whom it concerns.</param>
/// <param name="When">When it concerns them.</param>
/// <param name="WhatToDo">What to do.</param>
/// <param name="Source">The key of the source.</param>
/// <param name="Locator">Where in it.</param>
/// <param name="Evidence">How it was seen.</param>
/// <param name="Concerns">The materials that call for it; <see langword="null"/> when the formula does not.</param>
internal sealed record CautionRule(
    string Hazard, string Who, string When, string WhatToDo, string Source, string? Locator, Evidence Evidence, Func<CautionedFormula, IReadOnlyList<string>?> Concerns)
{
    /// <summary>The key of the work in which a recalled caution should be looked up.</summary>
    public string? CheckIn { get; init; }

    public CautionFinding? Apply(CautionedFormula formula) => Concerns(formula) is { } ingredients
        ? new CautionFinding
        {
            Hazard = Hazard,
            Who = Who,
            When = When,
            WhatToDo = WhatToDo,
            Ingredients = ingredients,
            Source = Source,
            Locator = Locator,
            CheckIn = CheckIn,
            Evidence = Evidence,
        }
        : null;
}
