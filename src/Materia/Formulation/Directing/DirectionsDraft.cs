using Materia.Formulation.Sections;
using Materia.Regulation.Cautioning;

namespace Materia.Formulation.Directing;

/// <summary>Puts the directions of a formula together: what holds of its use, what this formula adds, and its cautions.</summary>
internal static class DirectionsDraft
{
    public static Directions Of(EvaluationInput input)
    {
        var use = input.Formula.Use;
        var usual = use is null ? null : UseDirections.Find(use.Id);
        List<string> warnings = [];
        if (use is null)
        {
            warnings.Add("The formula names no use, so how much, where and how long cannot be said. Give \"use\", such as \"hair-mask-rinse-off\"; GET /v1/uses lists them.");
        }
        else if (usual is null)
        {
            warnings.Add($"No directions are kept for the use \"{use.Id}\"; what follows holds of this formula in any use.");
        }

        return new Directions
        {
            Use = use?.Id,
            UseName = use?.Name,
            Sentences = [.. (usual?.Sentences() ?? []).Concat(UsingRules.Of(input)).Concat(KeepingRules.Of(input)).OrderBy(s => s.Topic)],
            Cautions = [.. input.Of(ProductSections.Cautions).Where(Cautions.ConcernsUse)],
            Warnings = warnings,
        };
    }
}
