using Materia.Chemistry.Preserving;
using Materia.Formulation.Sections;
using static Materia.Formulation.Directing.DirectionSentence;

namespace Materia.Formulation.Directing;

/// <summary>How a formula is kept and when it is thrown away, from its oxidation, its water, its preservation and its melting. No number of months is ever given.</summary>
internal static class KeepingRules
{
    /// <summary>A shelf or a bag in summer [Cel].</summary>
    private const double SummerShelf = 35;

    /// <summary>The materials that carry most of what oxidises; more names help nobody.</summary>
    private const int CarriersNamed = 2;

    public static IEnumerable<DirectionSentence> Of(EvaluationInput input) => [.. Storage(input), .. Discard(input)];

    private static IEnumerable<DirectionSentence> Storage(EvaluationInput input)
    {
        yield return Usual(DirectionTopic.Storage, "Keep it closed, dark, dry and cool, out of the bathroom's warmth and of children's reach; write the date of making on the jar.");
        var melting = input.Of(ChemistrySections.Melting);
        if (melting.ClearPoint?.Value is { } clear and < SummerShelf && melting.Texture.Any(t => t is { Temperature: 20, Percent: >= 3 }))
        {
            var whipped = input.Formula.OverrunPercent > 0 ? " What has melted once has lost its air and does not become fluffy again." : string.Empty;
            yield return Because(
                DirectionTopic.Storage, $"At about {Chemistry.Written.Number(Math.Round(clear))} °C it is liquid: keep it below that in summer, and do not post it in a heat wave.{whipped}", ChemistrySections.Melting.Name);
        }

        var oxidation = input.Of(ChemistrySections.Oxidation);
        if (oxidation.Band?.Word is "fast" or "very-fast")
        {
            IReadOnlyList<string> carriers = [.. oxidation.Carriers.Take(CarriersNamed).Select(c => c.Ingredient)];
            yield return Because(
                DirectionTopic.Storage, $"Its fats take up oxygen {(oxidation.Band.Word == "fast" ? "fast" : "very fast")}: make little at a time, fill small dark jars to the brim, and keep those that wait in the refrigerator.",
                ChemistrySections.Oxidation.Name, carriers);
        }

        var preservation = input.Of(ProductSections.Preservation);
        foreach (var sentence in preservation.InUse)
        {
            yield return Because(DirectionTopic.Storage, sentence, ProductSections.Preservation.Name);
        }
    }

    private static IEnumerable<DirectionSentence> Discard(EvaluationInput input)
    {
        var preservation = input.Of(ProductSections.Preservation);
        var section = ProductSections.Preservation.Name;
        yield return preservation.Need switch
        {
            PreservationNeed.Needed when preservation.Preservatives.Count == 0 => Because(
                DirectionTopic.Discard, "It holds water and no preservative: make only what you use at once and throw the rest away the same day. A refrigerator slows what grows in it and does not stop it.", section, Waters(preservation)),
            PreservationNeed.Needed => Because(
                DirectionTopic.Discard, "It holds water. How long its preservatives hold out, only a challenge test of the finished product shows; until there is one, make little and keep a jar of each batch to watch. Throw it away at the first speck, gas, new smell or parting.", section, Waters(preservation)),
            PreservationNeed.Unknown => Because(
                DirectionTopic.Discard, "How much water it holds is not known well enough. Treat it as a product with water until it is: small amounts, clean spatula, and away with it at the first speck, gas or new smell.", section, Waters(preservation)),
            _ when input.Formula.Use?.Id is "hair-clay-wash" or "clay-face-mask" && preservation.Water.Anhydrous == true => Because(
                DirectionTopic.Discard, "The dry powder keeps as long as its parts do. Once stirred with water it is a product without preservative: throw away what is left over the same day.", section),
            _ => Because(
                DirectionTopic.Discard, "Without water it does not spoil by microbes while it stays dry. If water got in, or you see specks or drops, throw it away.", section),
        };
        var oxidation = input.Of(ChemistrySections.Oxidation);
        if (oxidation.CoxValue.Absent is null)
        {
            yield return Because(
                DirectionTopic.Discard, "Fat that has turned smells of old nuts, putty or crayons, stings the nose, gets sticky or loses its colour: throw it away then, and do not mask it with fragrance.", ChemistrySections.Oxidation.Name);
        }

        foreach (var sentence in oxidation.Storage)
        {
            yield return Because(DirectionTopic.Discard, sentence, ChemistrySections.Oxidation.Name);
        }
    }

    private static IReadOnlyList<string> Waters(Preservation preservation) =>
        [.. preservation.Water.Sources.Select(s => s.Ingredient).Concat(preservation.Water.Unknown).Distinct(StringComparer.Ordinal)];
}
