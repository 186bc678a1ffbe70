using Materia.Catalogue;
using Materia.Chemistry.Heating;

namespace Materia.Formulation.Making;

/// <summary>Steps for a formula with a water phase.</summary>
internal static class WaterRoute
{
    /// <summary>A cream is filled below this, so that no water condenses under the lid [Cel] (common practice).</summary>
    private const double FillBelow = 35;

    public static string Add(Bench bench, Pots pots)
    {
        var melts = bench.Of(ProcessPhase.Melt);
        var oils = bench.Of(ProcessPhase.Oil);
        var water = bench.Of(ProcessPhase.Water);
        var hot = melts.Count > 0;
        var emulsion = water.Count > 0 && melts.Count + oils.Count > 0;
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Prepare,
            Action = "Water feeds microbes, so work as clean as for canning: wash hands, wipe bench, beakers, whisk and jars with alcohol and let them dry. Weigh everything, the preservative too. Have pH strips or a meter ready.",
            WatchFor = "Clean tools that are not touched again with bare hands.",
            Duration = PlanFigures.Usual(20, 15, 30),
        });
        var target = hot ? HeatTarget.Of(bench) : null;
        Water(bench, water, target);
        if (target is not null)
        {
            MeltOils(bench, pots, target, melts, oils);
        }
        else if (oils.Count > 0)
        {
            bench.Add(new ProcessStep
            {
                Phase = MakingStage.Blend,
                Action = $"Stir {Words.Names(oils)} together in a second beaker; nothing in it has to be melted, so no heat is needed.",
                WatchFor = "One even liquid.",
                Temperature = PlanFigures.Celsius(bench.Room, bench.Room, bench.Room),
                Duration = PlanFigures.Usual(5, 2, 10),
            }, oils);
        }

        if (emulsion)
        {
            Emulsify(bench, pots, target);
        }

        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Prepare,
            Action = "Weigh the beaker again and make up with boiled, cooled water what has steamed off, so that the percentages hold.",
            WatchFor = "The weight of all that has gone in so far, the beaker left out.",
            Duration = PlanFigures.Usual(3, 2, 5),
        });
        CoolSteps.Add(bench, pots, false);
        var measured = bench.Input.Formula.Ph;
        var acids = bench.Lines.Any(l => l.Line.Ingredient.Kind == IngredientKind.Preservative);
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Check,
            Action = measured is null
                ? $"Measure the pH of the finished product: strips for a thick one, a meter in a 10 % slurry with boiled water. Set it with drops of a 10 % citric acid or bicarbonate solution, measure again after each{(acids ? ", and keep to the range in which the preservative works (see preservation)" : "")}."
                : "Measure the pH of the finished product, set it to the value that the formula states with drops of a 10 % citric acid or bicarbonate solution, and measure again after each.",
            WatchFor = "Two readings that agree; write the value down with the batch.",
            Temperature = PlanFigures.Celsius(Math.Min(25, Math.Max(20, bench.Room)), Math.Min(20, bench.Room), Math.Max(30, bench.Room)),
            Duration = PlanFigures.Usual(10, 5, 20),
        });
        var fillAt = Math.Max(bench.Room, Math.Min(pots.Now, FillBelow));
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Fill,
            Action = $"Fill below {Words.Celsius(FillBelow)} into clean bottles, tubes or pump jars, wipe the rim and close. Warmer, water condenses under the lid, and mould begins there. Label with name, date and lot numbers.",
            WatchFor = "No drops under the lid the next day; look again for parting, smell and specks after a week.",
            Temperature = PlanFigures.Celsius(fillAt, Math.Min(bench.Room, FillBelow), Math.Max(FillBelow, fillAt)),
            Duration = PlanFigures.Usual(10, 5, 20),
        });
        if (!bench.Lines.Any(l => l.Line.Ingredient.Kind == IngredientKind.Preservative))
        {
            bench.Warnings.Add("It holds water and no preservative is listed: it keeps for days in the fridge at best (see preservation).");
        }

        return emulsion ? hot ? "emulsion: both phases are heated and brought together" : "emulsion: cold phases are brought together" : "water: dissolved and filled, no fat to melt";
    }

    private static void Water(Bench bench, IReadOnlyList<PlacedLine> water, HeatTarget? target)
    {
        if (water.Count == 0)
        {
            return;
        }

        var thick = water.Where(l => l.Line.Ingredient.Kind == IngredientKind.Thickener).ToList();
        var slurry = thick.Count > 0 ? $" Rub {Words.Names(thick)} with the glycerin or glycol first, or strew it slowly onto fast-stirred water, and wait until it has swollen." : "";
        var at = target?.Temperature ?? bench.Room;
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Water,
            Action = target is null
                ? $"Stir {Words.Names(water)} together at room temperature until all is dissolved; no heating is needed.{slurry}"
                : $"Put {Words.Names(water)} into a beaker of its own, cover it, and bring it to {Words.Celsius(at)} in the water bath.{slurry}",
            WatchFor = target is null ? "Clear or evenly thick, without lumps." : "No lumps, and the same temperature as the oil phase, within three degrees: colder water makes the fats curdle.",
            Temperature = PlanFigures.Celsius(at, target is null ? at : at - 3, target?.Cap ?? at),
            Duration = target is null ? PlanFigures.Usual(10, 5, 30) : PlanFigures.Usual(20, 10, 30),
        }, water);
    }

    private static void MeltOils(Bench bench, Pots pots, HeatTarget target, IReadOnlyList<PlacedLine> melts, IReadOnlyList<PlacedLine> oils)
    {
        var heating = target.Heating(bench);
        pots.Heating = heating.Plan;
        pots.Now = target.Temperature;
        var emulsifiers = melts.Where(l => l.Line.Ingredient.Kind == IngredientKind.Emulsifier).ToList();
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Melt,
            Action = $"At the same time melt {Words.Names(melts)} in the {bench.Making.Vessel.Name}, beside the water in the same bath, to {Words.Celsius(target.Temperature)}.{(emulsifiers.Count > 0 ? $" {Words.Upper(Words.Names(emulsifiers))} is the emulsifier and must be wholly melted before the water comes." : "")}",
            WatchFor = "A clear melt without flakes.",
            Temperature = PlanFigures.Celsius(target.Temperature, target.Temperature - 3, target.Cap),
            Duration = heating.Duration,
        }, melts);
        if (oils.Count > 0)
        {
            bench.Add(new ProcessStep
            {
                Phase = MakingStage.Oil,
                Action = $"Stir {Words.Names(oils)} into the melt and bring it back to {Words.Celsius(target.Temperature)}; in the heat for minutes only.",
                WatchFor = "Clear again.",
                Temperature = PlanFigures.Celsius(target.Temperature, target.Temperature - 5, target.Cap),
                Duration = PlanFigures.Usual(5, 3, 10),
            }, oils);
        }
    }

    private static void Emulsify(Bench bench, Pots pots, HeatTarget? target)
    {
        var has = bench.Lines.Any(l => l.Line.Ingredient.Kind is IngredientKind.Emulsifier or IngredientKind.Surfactant || l.Line.Ingredient.Functions.Any(f => f.Function.StartsWith("surfactant-emulsifying", StringComparison.Ordinal)));
        if (!has)
        {
            bench.Warnings.Add("No emulsifier is listed: water and oil will part. Shake before use, or add one (see emulsion).");
        }

        var at = target?.Temperature ?? bench.Room;
        bench.Add(new ProcessStep
        {
            Phase = MakingStage.Emulsify,
            Action = $"{(target is null ? "Pour" : $"With both at {Words.Celsius(at)}, pour")} the water into the oils in a thin stream with the stick blender running at the bottom, one minute in bursts so that no air is drawn in. Then change to a spatula and stir on{(target is null ? "." : " while it cools, or the fats set in grains.")}",
            WatchFor = has ? "White, even and shiny; it thickens as it cools. Oil drops at the rim want another burst." : "It looks white while it is stirred and parts when it stands.",
            Temperature = PlanFigures.Celsius(at, target is null ? at : at - 5, target?.Cap ?? at),
            Duration = PlanFigures.Usual(5, 3, 10),
        });
        pots.Now = at;
        if (target is not null)
        {
            bench.Figures.Add(Surroundings.StirredInAir);
        }
    }
}
