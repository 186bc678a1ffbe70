using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Preserving;

namespace Materia.Chemistry.Emulsions;

/// <summary>Works out what HLB says of a formula.</summary>
public static class FormulaEmulsion
{
    // Below this a mean HLB points to water in oil: the usual classes are 3 to 6 for it and 8 to 16 for oil in water.
    private const double Divide = 7;

    // The arithmetic is exact; as guidance a gap within this says nothing.
    private const double Guidance = 1;

    /// <summary>Works it out. Absent without water, without oil or without an emulsifier.</summary>
    public static Emulsion Of(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        var parts = EmulsionParts.Of(blend);
        var water = FreeWater.Of(parts.All);
        var emulsion = new Emulsion
        {
            RequiredOilInWater = HlbSum.Required(parts.Oils, Property.RequiredHlb, blend.Explain),
            RequiredWaterInOil = HlbSum.Required(parts.Oils, Property.RequiredHlbWaterInOil, blend.Explain),
            Offered = HlbSum.Offered(parts.Emulsifiers, blend.Explain),
            Emulsifiers = [.. parts.Emulsifiers.Select(Present).OrderByDescending(e => e.Percent)],
            ChargeConflicts = Preserving.ChargeConflicts.Of(parts.All),
        };
        if (Missing(parts, water) is { } missing)
        {
            return emulsion with { Absent = missing };
        }

        emulsion = emulsion with { Caveats = [.. EmulsionCaveats.Of(parts)] };
        var phases = PhaseVolume.Of(parts, blend.Release);
        if (emulsion.Offered.Value is not { } offered)
        {
            return emulsion with { Phases = phases, Pairs = EmulsifierPairs.For(emulsion.RequiredOilInWater.Value, parts.Emulsifiers, blend.Release) };
        }

        var type = offered < Divide ? EmulsionType.WaterInOil : EmulsionType.OilInWater;
        var required = (type == EmulsionType.OilInWater ? emulsion.RequiredOilInWater : emulsion.RequiredWaterInOil).Value;
        var gap = required is { } need ? Math.Round(offered - need, 2) : (double?)null;
        return emulsion with
        {
            Type = type,
            Gap = gap,
            Reading = Reading(type, gap),
            Pairs = EmulsifierPairs.For(required, parts.Emulsifiers, blend.Release),
            Phases = phases with { Note = PhaseVolume.Note(type, phases) },
        };
    }

    private static string? Missing(EmulsionParts parts, FreeWater water) =>
        water.Anhydrous is true ? "There is no water in the formula, so there is nothing to emulsify. An emulsifier in it, if any, lets it mix with water in use."
        : parts.Oils.Count == 0 ? "There is no oil phase in the formula."
        : parts.Emulsifiers.Count == 0 && parts.All.Any(p => p.Owner.Kind == IngredientKind.Surfactant)
            ? "There is no emulsifier in the formula. Its surfactants dissolve or hold a little oil, essential oils above all; how much, a small batch that stands for a week shows, and HLB does not."
        : parts.Emulsifiers.Count == 0 ? "There is no emulsifier in the formula: oil and water will part. Add one, or leave out the water. Gums, proteins and clays can hold small amounts of oil, which HLB does not describe."
        : null;

    private static EmulsifierPresent Present(FormulaPart part)
    {
        var hlb = StoredFigures.Find(part.Ingredient!, Property.Hlb);
        return new EmulsifierPresent(
            part.Component, part.Part.Name, ExactShare.Trim(part.Share.Typical), hlb is null ? null : (double)hlb.Central(), hlb is not null && EmulsionParts.IsDescribed(part.Ingredient!));
    }

    private static string Reading(EmulsionType type, double? gap) => (type, gap) switch
    {
        (_, null) => "The emulsifiers point to this type; what the oil phase requires for it is not known well enough to compare.",
        (_, var g) when Math.Abs(g!.Value) <= Guidance => "The emulsifiers offer what the oil phase requires, as nearly as HLB can tell.",
        (EmulsionType.OilInWater, < 0) => "The emulsifiers are too fat-loving for this oil phase: use more of the one with the higher HLB.",
        (EmulsionType.OilInWater, _) => "The emulsifiers are too water-loving for this oil phase: use more of the one with the lower HLB.",
        (_, < 0) => "The emulsifiers are more fat-loving than this oil phase asks for water in oil.",
        _ => "The emulsifiers are more water-loving than this oil phase asks for water in oil: it may turn over to oil in water.",
    };
}
