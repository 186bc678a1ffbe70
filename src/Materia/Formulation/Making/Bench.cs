using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Heating;
using Materia.Chemistry.Materials;
using Materia.Formulation.Batches;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Making;

/// <summary>What all steps of a plan look at: the lines in their phases, the heat in the batch, the vessel, and the steps so far.</summary>
internal sealed class Bench
{
    /// <summary>A batch of a kitchen, where the formula has none [g].</summary>
    private const double UsualBatch = 250;

    /// <summary>A fat with so much solid no longer pours [%]; ours, as for <see cref="Chemistry.Melting.TextureWords"/>.</summary>
    private const double Pourable = 3;

    private readonly BatchPlan? batch;
    private readonly StepCautions cautions;
    private readonly List<ProcessStep> steps = [];

    public Bench(EvaluationInput input)
    {
        Input = input;
        Making = input.Formula.Making;
        Assumed.AddRange(Making.Assumed);
        batch = input.Formula.Batch is null ? null : input.Of(BatchPlan.Section);
        Mass = batch?.Total is { Value: > 0 } total ? (double)(total.Value * input.Formula.Batch!.Unit.Grams) : UsualBatch;
        if (batch?.Total is not { Value: > 0 })
        {
            Assumed.Add("The formula has no batch with a mass; times are for 250 g.");
        }

        cautions = new StepCautions(input.Of(ProductSections.Cautions));
        Melting = input.Of(ChemistrySections.Melting);
        Heat = new HeatContent(input.Blend, Melting);
        Figures.AddRange(Heat.Figures);
        Lines = Place(input);
        Filled = new FilledVessel(Making.Vessel, Mass / Density() * 1e-6);
        StiffensAt = Heat.TemperatureAt(Pourable) ?? (Melting.Texture.Any(t => t.Note is not null) ? Melting.ClearPoint?.Value : null);
        if (IsWatery)
        {
            // A cream stirs and pours down to room temperature whatever its fats do.
            StiffensAt = null;
        }
        else if (!Heat.HasCurve)
        {
            StiffensAt = Of(ProcessPhase.Melt).Max(l => l.Traits.MeltedFrom);
        }
    }

    public EvaluationInput Input { get; }

    public NormalisedMaking Making { get; }

    public double Room => Making.Room;

    /// <summary>The batch [g].</summary>
    public double Mass { get; }

    public BlendMelting Melting { get; }

    public HeatContent Heat { get; }

    public FilledVessel Filled { get; }

    public IReadOnlyList<PlacedLine> Lines { get; }

    public bool IsWatery { get; private set; }

    /// <summary>Where it stops pouring on cooling [Cel]; <see langword="null"/> where it stays liquid.</summary>
    public double? StiffensAt { get; }

    public List<string> Assumed { get; } = [];

    public List<string> Warnings { get; } = [];

    public List<SourcedFigure> Figures { get; } = [];

    public IReadOnlyList<ProcessStep> Steps => steps;

    public IReadOnlyList<PlacedLine> Of(ProcessPhase phase) => [.. Lines.Where(l => l.Phase == phase)];

    /// <summary>Adds a step, its number and cautions with it.</summary>
    public void Add(ProcessStep step, IReadOnlyList<PlacedLine>? lines = null, Func<PlacedLine, CoolDownLimit>? limit = null) => steps.Add(step with
    {
        Number = steps.Count + 1,
        Ingredients = lines is null ? [] : [.. lines.Select(l => Ingredient(l, limit?.Invoke(l)))],
        Cautions = [.. step.Cautions, .. cautions.Of(step.Phase)],
    });

    /// <summary>The time of cooling or warming [min], and the figure it rests on.</summary>
    public double Minutes(SourcedFigure coefficient, double from, double to, double surroundings)
    {
        if (!Figures.Contains(coefficient))
        {
            Figures.Add(coefficient);
        }

        return CoolingRun.Minutes(Heat, Mass, Filled, coefficient.Value, from, to, surroundings);
    }

    private List<PlacedLine> Place(EvaluationInput input)
    {
        var index = MaterialIndex.For(input.Release);
        var traits = input.Formula.Lines.Select(l => MakingTraits.Of(l, index)).ToList();
        decimal water = 0, plain = 0;
        for (var i = 0; i < traits.Count; i++)
        {
            var line = input.Formula.Lines[i];
            water += traits[i].IsWatery || line.Phase == Phase.Water ? line.Percent : 0;
            plain += traits[i].IsWatery && line.Ingredient.Kind == IngredientKind.Solvent ? line.Percent : 0;
        }

        // Under a twentieth it is moisture in a fat, not a phase of its own.
        IsWatery = water >= 5;
        var kitchen = new Kitchen(Room, IsWatery, plain >= water / 2);
        return [.. input.Formula.Lines.Select((l, i) => PhaseChoice.Of(i, l, traits[i], kitchen))];
    }

    private ProcessIngredient Ingredient(PlacedLine line, CoolDownLimit? limit) => new()
    {
        Line = line.Index,
        Ingredient = line.Line.IsOwn ? null : line.Line.Material,
        Own = line.Line.IsOwn ? line.Line.Material : null,
        Name = line.Name,
        Percent = line.Line.Percent,
        Mass = batch?.Lines is { } weights && line.Index < weights.Count ? weights[line.Index].Mass : null,
        Phase = line.Phase,
        Because = line.Because,
        Evidence = line.Evidence,
        Source = line.Source,
        Notes = [.. Notes(line)],
        BestBelow = limit is { BestBelow: var best } && double.IsFinite(best) ? best : null,
        NotAbove = limit is { NotAbove: var most } && double.IsFinite(most) ? most : null,
    };

    // A note that speaks of another phase, or of water where there is none, would mislead.
    private IEnumerable<StepCaution> Notes(PlacedLine line)
    {
        if (line.Traits.PhaseNote is { } phase && phase.Phase == line.Phase)
        {
            yield return new StepCaution(phase.Text, phase.Evidence, phase.Source, phase.Locator, phase.CheckIn);
        }

        if (line.Traits.Dispersing is { } how && (IsWatery || !how.Text.Contains("water", StringComparison.OrdinalIgnoreCase)))
        {
            yield return new StepCaution(how.Text, how.Evidence, how.Source, how.Locator, how.CheckIn);
        }
    }

    private double Density() => Input.Of(FormulaDensity.Section).Values is { Count: > 0 } values && values[^1].Value > 0 ? values[^1].Value : 0.92;
}
