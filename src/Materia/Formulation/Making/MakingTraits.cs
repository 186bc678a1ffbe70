using System.Text.RegularExpressions;
using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Making;

/// <summary>What the records of a line's material say for making.</summary>
/// <param name="MeltedFrom">The temperature from which all of it is melted [Cel]; <see langword="null"/> where no figure is stored.</param>
/// <param name="MeltingUnknown">True for a kind that is solid on the bench without a melting figure.</param>
/// <param name="FlashPoint">The least flash point [Cel], of what flashes below the heat of a kitchen.</param>
/// <param name="Bears">The highest temperature that it bears [Cel].</param>
/// <param name="BestBelow">The temperature below which its note on the phase asks to add it [Cel].</param>
/// <param name="PhaseNote">Its note on the phase.</param>
/// <param name="Dispersing">Its note on dispersing.</param>
/// <param name="IsWatery">True for water, plant waters and what is mostly water.</param>
internal sealed partial record MakingTraits(
    double? MeltedFrom, bool MeltingUnknown, double? FlashPoint, double? Bears, double? BestBelow, HandlingNote? PhaseNote, HandlingNote? Dispersing, bool IsWatery)
{
    /// <summary>Liquids that flash above this are no concern at the temperatures of making [Cel].</summary>
    private const double HarmlessFlash = 120;

    private const decimal MostlyWater = 50;

    public static MakingTraits Of(NormalisedLine line, MaterialIndex index)
    {
        double? melted = null, flash = null, bears = null;
        var unknown = false;
        decimal water = 0;
        foreach (var part in line.Parts)
        {
            var material = index.Find(part.Ingredient);
            melted = Greater(melted, material.MeltedFrom);
            unknown |= material.MeltingIsUnknown;
            if (StoredFigures.Find(part.Ingredient, Property.FlashPoint) is { } figure && (double)figure.Least() < HarmlessFlash)
            {
                flash = Lesser(flash, (double)figure.Least());
            }

            bears = Lesser(bears, StoredFigures.Find(part.Ingredient, Property.HighestProcessTemperature) is { } most ? (double)most.Central() : null);
            water += part.Share * WaterIn(part.Ingredient);
        }

        var notes = line.Parts.Count == 1 ? line.Parts[0].Ingredient.Handling : line.Ingredient.Handling;
        var phase = notes.FirstOrDefault(n => n.Phase is not null);
        return new MakingTraits(melted, unknown, flash, bears, phase is null ? null : StatedLimit(phase.Text), phase, notes.FirstOrDefault(n => n.Topic == HandlingTopic.Dispersing), water >= MostlyWater);
    }

    /// <summary>Whether all of it is liquid at a temperature, as far as the records tell.</summary>
    public bool IsLiquidAt(double temperature) => !MeltingUnknown && !(MeltedFrom > temperature);

    private static decimal WaterIn(Ingredient ingredient) =>
        ingredient.Kind == IngredientKind.Hydrosol || ingredient.InciName() is "Aqua" or "Water" or "AQUA" ? 100
        : StoredFigures.Find(ingredient, Property.WaterContent)?.Central() ?? 0;

    private static double? StatedLimit(string text) =>
        Below().Match(text) is { Success: true } found ? double.Parse(found.Groups[1].ValueSpan, System.Globalization.CultureInfo.InvariantCulture) : null;

    private static double? Greater(double? one, double? other) => one is null || other > one ? other ?? one : one;

    private static double? Lesser(double? one, double? other) => one is null || other < one ? other ?? one : one;

    [GeneratedRegex(@"\b(?:[Bb]elow|[Nn]ever above|[Ff]all to) (?:about )?(\d{2}) °C", RegexOptions.CultureInvariant)]
    private static partial Regex Below();
}
