using Materia.Chemistry;
using Materia.Chemistry.Heating;
using Materia.Chemistry.MethodTexts;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Making;

/// <summary>How to make it: steps in order, with the figures behind them.</summary>
public sealed record ProcessPlan
{
    /// <summary>The section <c>process</c>.</summary>
    public static EvaluationSection<ProcessPlan> Section { get; } =
        new("process", "How to make it: what goes in which pot and why, how hot, when to stir in powders and what is volatile, chilling, whipping, filling and setting, with times and cautions.", ProcessPlanner.Plan);

    /// <summary>In what way it is made.</summary>
    public required string Route { get; init; }

    /// <summary>The steps, in order.</summary>
    public required IReadOnlyList<ProcessStep> Steps { get; init; }

    /// <summary>The mass that times are worked out for [g].</summary>
    public required double BatchMass { get; init; }

    /// <summary>Heating; absent where nothing is heated.</summary>
    public HeatingPlan? Heating { get; init; }

    /// <summary>Cooling; absent where nothing is heated.</summary>
    public CoolingPlan? Cooling { get; init; }

    /// <summary>Whipping; absent where it is not whipped or does not solidify.</summary>
    public WhippingPlan? Whipping { get; init; }

    /// <summary>How far each powder sinks before the batch sets.</summary>
    public IReadOnlyList<PowderPlan> Powders { get; init; } = [];

    /// <summary>Whether it may turn grainy, and how to cool it; absent where it is not known.</summary>
    public Graininess? Graininess { get; init; }

    /// <summary>What was assumed for want of a word in the formula, as sentences.</summary>
    public required IReadOnlyList<string> Assumed { get; init; }

    /// <summary>What limits the plan.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>The figures that were set rather than known of these materials, each with its source.</summary>
    public required IReadOnlyList<SourcedFigure> Figures { get; init; }

    /// <summary>The key of the method.</summary>
    public string Method { get; init; } = HeatingMethods.Plan;
}

/// <summary>Heating to melt.</summary>
public sealed record HeatingPlan
{
    /// <summary>The temperature to heat to [Cel].</summary>
    public required double Temperature { get; init; }

    /// <summary>Why so hot, in a sentence.</summary>
    public required string Why { get; init; }

    /// <summary>The temperature that what is heated bears [Cel].</summary>
    public required double Cap { get; init; }

    /// <summary>What sets that temperature: a material, or the usual limit.</summary>
    public required string CappedBy { get; init; }

    /// <summary>Heat into batch, vessel and bath [kJ].</summary>
    public required PlanFigure Heat { get; init; }

    /// <summary>The power of the plate [W].</summary>
    public required double Power { get; init; }

    /// <summary>The key of the method.</summary>
    public string Method { get; init; } = HeatingMethods.MeltEnergy;
}

/// <summary>Cooling as one lump.</summary>
public sealed record CoolingPlan
{
    /// <summary>The Biot number in still air; above 0.1 the core lags behind the mean [1].</summary>
    public required double Biot { get; init; }

    /// <summary>The temperature from which it stiffens on cooling [Cel]; absent where it stays liquid in the cold.</summary>
    public double? StiffensAt { get; init; }

    /// <summary>From the heat to the first addition, or to that temperature, standing in the room and stirred now and then [min].</summary>
    public PlanFigure? OnTheBench { get; init; }

    /// <summary>The same in a bath of cold water, stirred [min].</summary>
    public PlanFigure? InColdWater { get; init; }

    /// <summary>What to think of it.</summary>
    public required string Note { get; init; }

    /// <summary>The key of the method.</summary>
    public string Method { get; init; } = HeatingMethods.Cooling;
}

/// <summary>The window in which it takes air.</summary>
public sealed record WhippingPlan
{
    /// <summary>The coolest temperature at which it takes air [Cel].</summary>
    public required double From { get; init; }

    /// <summary>The warmest temperature at which it holds air [Cel].</summary>
    public required double To { get; init; }

    /// <summary>The temperature to chill to [Cel].</summary>
    public required double ChillTo { get; init; }

    /// <summary>How long it stays in the window on the bench, the heat of the whisk left out [min]; absent where the room lies in the window and it stays as long as wanted.</summary>
    public PlanFigure? OnTheBench { get; init; }

    /// <summary>What to think of it.</summary>
    public required string Note { get; init; }

    /// <summary>The key of the method.</summary>
    public string Method { get; init; } = HeatingMethods.Whipping;
}

/// <summary>How far a powder sinks.</summary>
public sealed record PowderPlan : MaterialName
{
    /// <summary>The temperature at which it goes in [Cel].</summary>
    public required double Temperature { get; init; }

    /// <summary>The viscosity of the liquid round the grains there [mPa.s].</summary>
    public required double Viscosity { get; init; }

    /// <summary>How fast a grain sinks there [mm/h].</summary>
    public required double Velocity { get; init; }

    /// <summary>How far it sinks until the batch no longer flows [mm]; absent where it never sets.</summary>
    public PlanFigure? Sinks { get; init; }

    /// <summary>The key of the method.</summary>
    public string Method { get; init; } = HeatingMethods.Settling;
}
