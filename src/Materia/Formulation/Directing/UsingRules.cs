using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Formulation.Sections;
using static Materia.Formulation.Directing.DirectionSentence;

namespace Materia.Formulation.Directing;

/// <summary>What a formula adds to the directions for putting it on and taking it off.</summary>
internal static class UsingRules
{
    /// <summary>Skin and hands melt what is clear below this [Cel].</summary>
    private const double SkinTemperature = 34;

    /// <summary>From this much solid at 20 °C a product has to be melted in the hands [%]: where it stops being soft as an ointment.</summary>
    private const double Firm = 10;

    /// <summary>From this much fat a product has to be washed out with a cleanser [%].</summary>
    private const decimal Fatty = 20;

    public static IEnumerable<DirectionSentence> Of(EvaluationInput input)
    {
        var lines = input.Formula.Lines;
        if (Melts(input) is { } melts)
        {
            yield return melts;
        }

        if (input.Formula.Use is not { Exposure: Exposure.RinseOff } use)
        {
            yield break;
        }

        var fats = lines.Where(l => Kinds.IsLipid(l.Ingredient.Kind)).ToList();
        if (use.Site == BodySite.Hair && fats.Sum(l => l.Percent) >= Fatty && !lines.Any(l => l.Ingredient.Kind is IngredientKind.Surfactant or IngredientKind.Emulsifier))
        {
            yield return Because(
                DirectionTopic.Removal, "Nothing in it makes the fat mix with water: rub shampoo into the hair before any water, lather with a little water, rinse, and wash once more.",
                FormulaSummary.Section.Name, [.. fats.Select(l => l.Material)]);
        }

        if (Names(lines, k => k == IngredientKind.Clay) is { Count: > 0 } clays)
        {
            yield return Because(
                DirectionTopic.Removal, "Take it off while the clay is still moist; rinse until the water runs clear, and comb or rub only when no grains are left.", FormulaSummary.Section.Name, clays);
        }

        if (Names(lines, k => k == IngredientKind.EssentialOil) is { Count: > 0 } oils)
        {
            yield return Because(
                DirectionTopic.Overnight, "It holds essential oils reckoned for a product that is washed off. Before it stays on for hours, evaluate it with a leave-on use: limits and allergens differ.",
                RegulationSections.Limits.Name, oils);
        }
    }

    private static DirectionSentence? Melts(EvaluationInput input)
    {
        var melting = input.Of(ChemistrySections.Melting);
        if (melting.Absent is not null || melting.Texture.FirstOrDefault(t => t.Temperature == 20) is not { } room || room.Percent < Firm || melting.ClearPoint?.Value is not { } clear)
        {
            return null;
        }

        var (temperature, section) = (Chemistry.Written.Number(Math.Round(clear)), ChemistrySections.Melting.Name);
        return clear <= SkinTemperature
            ? Because(DirectionTopic.Application, $"It is {room.Words} at 20 °C and clear at about {temperature} °C: rub it between the palms until it has melted.", section)
            : Because(DirectionTopic.Application, $"It is {room.Words} at 20 °C and clear only at about {temperature} °C, above the warmth of skin: take thin scrapings and work them soft; it will not melt wholly.", section);
    }

    private static IReadOnlyList<string> Names(IReadOnlyList<NormalisedLine> lines, Func<IngredientKind, bool> isMeant) =>
        [.. lines.Where(l => l.Parts.Any(p => isMeant(p.Ingredient.Kind))).Select(l => l.Material).Distinct(StringComparer.Ordinal)];
}
