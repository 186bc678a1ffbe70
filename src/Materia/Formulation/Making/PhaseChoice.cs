using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Making;

/// <summary>Decides which phase a line is worked in: the maker's word, else the catalogue's note, else the kind.</summary>
internal static class PhaseChoice
{
    private const string Practice = "trade-practice";

    /// <param name="index">The line's place.</param>
    /// <param name="line">The line.</param>
    /// <param name="traits">What its records say.</param>
    /// <param name="kitchen">What the formula is as a whole.</param>
    public static PlacedLine Of(int index, NormalisedLine line, MakingTraits traits, Kitchen kitchen)
    {
        PlacedLine Placed(ProcessPhase phase, string because, Evidence? evidence = Evidence.CommonPractice, string source = Practice) =>
            new(index, line, traits, phase, because, evidence, source);

        var kind = line.Ingredient.Kind;
        if (line.Phase is { } chosen)
        {
            var phase = chosen switch
            {
                Phase.Oil => traits.IsLiquidAt(kitchen.Room) && !Kinds.IsSolidLipid(kind) ? ProcessPhase.Oil : ProcessPhase.Melt,
                Phase.Water => ProcessPhase.Water,
                Phase.Powder => ProcessPhase.Powder,
                _ => ProcessPhase.CoolDown,
            };
            return Placed(phase, $"You put it into the {Words(chosen)} phase{(phase == ProcessPhase.Melt && chosen == Phase.Oil ? ", and it is solid on the bench, so it is melted there" : "")}.", null, "own");
        }

        var noted = traits.PhaseNote?.Phase;
        if (traits.IsWatery && kitchen.IsWatery && (noted is null or ProcessPhase.Water || (kind == IngredientKind.Hydrosol && !kitchen.HasPlainWater)))
        {
            return Placed(ProcessPhase.Water, noted == ProcessPhase.CoolDown ? "It is the only water of the formula, so it makes up the water phase; warm it no longer than needed, for its scent leaves with the steam." : "It is the water that the rest dissolves in.");
        }

        if (noted == ProcessPhase.Water && !kitchen.IsWatery)
        {
            return WithoutWater(kind, Placed);
        }

        if (noted == ProcessPhase.Melt && traits.MeltedFrom is not null && traits.IsLiquidAt(kitchen.Room))
        {
            return Placed(ProcessPhase.Oil, $"It is melted from {Number(traits.MeltedFrom.Value)} °C and liquid in your room, so it needs no melting.");
        }

        return (noted ?? ByKind(kind, kitchen)) switch
        {
            ProcessPhase.Melt => Placed(ProcessPhase.Melt, traits.MeltedFrom is { } melted ? $"It is solid on the bench and wholly melted only at {Number(melted)} °C, so it is melted first." : "It is solid or waxy on the bench, so it is melted with the fats."),
            ProcessPhase.Oil when !traits.IsLiquidAt(kitchen.Room) => Placed(ProcessPhase.Melt, "It dissolves in oil but is solid on the bench, so it goes into the melt."),
            ProcessPhase.Oil => Placed(ProcessPhase.Oil, kind == IngredientKind.Oil ? "A liquid oil: it needs no heat of its own and goes in after the solids, which spares it." : "It is liquid and dissolves in the oils."),
            ProcessPhase.Water => Placed(ProcessPhase.Water, "It dissolves or swells in water, not in fat."),
            ProcessPhase.Powder => Placed(ProcessPhase.Powder, "A powder: it does not dissolve and has to be spread evenly."),
            _ => Placed(ProcessPhase.CoolDown, CoolDownReason(kind, traits)),
        };
    }

    private static PlacedLine WithoutWater(IngredientKind kind, Func<ProcessPhase, string, Evidence?, string, PlacedLine> placed) => kind switch
    {
        IngredientKind.Clay or IngredientKind.Powder or IngredientKind.Starch or IngredientKind.PhAdjuster or IngredientKind.Chelator or IngredientKind.Thickener or IngredientKind.Protein or IngredientKind.Colourant =>
            placed(ProcessPhase.Powder, "It belongs into water and the formula has none, so it stays a powder in the fat.", Evidence.CommonPractice, Practice),
        IngredientKind.Emulsifier or IngredientKind.Surfactant or IngredientKind.Conditioner =>
            placed(ProcessPhase.Oil, "There is no water phase, so it is stirred into the oils, where it helps the product to rinse off.", Evidence.CommonPractice, Practice),
        _ => placed(ProcessPhase.CoolDown, "It belongs into water and the formula has none; it does not dissolve in fat, so it is stirred in late and may part again.", Evidence.CommonPractice, Practice),
    };

    private static ProcessPhase ByKind(IngredientKind kind, Kitchen kitchen) => kind switch
    {
        IngredientKind.Butter or IngredientKind.Wax or IngredientKind.FattyAlcohol or IngredientKind.FattyAcid or IngredientKind.Emulsifier => ProcessPhase.Melt,
        IngredientKind.Oil or IngredientKind.Ester or IngredientKind.Hydrocarbon or IngredientKind.Silicone or IngredientKind.Antioxidant or IngredientKind.Resin => ProcessPhase.Oil,
        IngredientKind.Clay or IngredientKind.Powder or IngredientKind.Starch or IngredientKind.Colourant => ProcessPhase.Powder,
        IngredientKind.Humectant or IngredientKind.Thickener or IngredientKind.Chelator or IngredientKind.PhAdjuster or IngredientKind.Surfactant or IngredientKind.Conditioner or IngredientKind.Solvent =>
            kitchen.IsWatery ? ProcessPhase.Water : ProcessPhase.CoolDown,
        _ => ProcessPhase.CoolDown,
    };

    private static string CoolDownReason(IngredientKind kind, MakingTraits traits) => kind switch
    {
        IngredientKind.EssentialOil => traits.FlashPoint is { } flash
            ? $"It is volatile and flashes at {Number(flash)} °C: heat drives its scent off, so it goes in last."
            : "It is volatile: heat drives its scent off, so it goes in last.",
        IngredientKind.Preservative => "It goes in when the heat is off, into the finished mass, where it is spread evenly and keeps its strength.",
        IngredientKind.Oil => "A delicate oil that heat would start on its way to rancidity, so it goes in late.",
        _ when traits.FlashPoint is { } flash => $"It is volatile and flashes at {Number(flash)} °C, so it goes in when the heat is off.",
        _ => "It suffers from heat or gains nothing by it, so it goes in when the heat is off.",
    };

    private static string Words(Phase phase) => phase switch
    {
        Phase.Oil => "oil",
        Phase.Water => "water",
        Phase.Powder => "powder",
        _ => "cool-down",
    };

    private static string Number(double value) => Fault.Text(decimal.Round((decimal)value, 1));
}

/// <summary>What a formula is as a whole.</summary>
/// <param name="Room">The temperature of the room [Cel].</param>
/// <param name="IsWatery">True where it has a water phase.</param>
/// <param name="HasPlainWater">True where there is water beside plant waters.</param>
internal sealed record Kitchen(double Room, bool IsWatery, bool HasPlainWater);
