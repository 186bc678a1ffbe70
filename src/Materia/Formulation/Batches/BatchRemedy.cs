using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Batches;

/// <summary>A line that is under ten steps of the scale, and what would mend it; any one of the three is enough.</summary>
public sealed record BatchRemedy : MaterialName
{
    /// <summary>The steps of the scale that it got.</summary>
    public required long Steps { get; init; }

    /// <summary>The smallest batch in which it has ten steps; absent when no batch of a sane size does.</summary>
    public Mass? BatchMass { get; init; }

    /// <summary>The coarsest scale, by tenths of this one, on which it has ten steps in this batch.</summary>
    public required Mass FinerScale { get; init; }

    /// <summary>A premix in a material of the formula that can carry it; absent where none is known to, or none has enough.</summary>
    public Premix? Premix { get; init; }

    /// <summary>The remedies as a sentence.</summary>
    public required string Text { get; init; }

    internal static BatchRemedy? Of(NormalisedFormula formula, IReadOnlyList<long> parts, long steps, int index)
    {
        if (parts[index] >= BatchPlanner.FewSteps)
        {
            return null;
        }

        var (line, batch) = (formula.Lines[index], formula.Batch!);
        var owed = line.Percent * steps / 100;
        var needed = decimal.Ceiling(BatchPlanner.FewSteps * 100 / line.Percent);
        var scale = batch.ScaleResolution;
        for (var fine = owed; fine < BatchPlanner.FewSteps; fine *= 10)
        {
            scale /= 10;
        }

        var premix = Premix.Of(formula, parts, index, owed);
        var mass = needed <= BatchPlanner.GreatestSteps ? new Mass(needed * batch.ScaleResolution, batch.Unit.Ucum) : null;
        var larger = mass is null ? string.Empty : $"make at least {Fault.Text(mass.Value)} {batch.Unit.Word}, ";
        var text = $"{larger}use a scale that shows {Fault.Text(scale)} {batch.Unit.Word}, or weigh a premix{premix?.Words(line.Material, batch) ?? " in something of the formula that it dissolves in or that it is rubbed down with"}.";
        return new BatchRemedy
        {
            Ingredient = line.IsOwn ? null : line.Material,
            Own = line.IsOwn ? line.Material : null,
            Steps = parts[index],
            BatchMass = mass,
            FinerScale = new Mass(scale, batch.Unit.Ucum),
            Premix = premix,
            Text = char.ToUpperInvariant(text[0]) + text[1..],
        };
    }
}

/// <summary>A small amount stretched with a material that the formula holds anyway, so that both can be weighed.</summary>
/// <param name="Carrier">What results call the carrier.</param>
/// <param name="OneIn">The dilution: one part in so many.</param>
/// <param name="Material">How much of the material to weigh for the premix.</param>
/// <param name="With">How much of the carrier to weigh for the premix.</param>
/// <param name="Take">How much of the premix goes into the batch.</param>
/// <param name="CarrierLeft">How much of the carrier is then still to be weighed into the batch.</param>
public sealed record Premix(string Carrier, int OneIn, Mass Material, Mass With, Mass Take, Mass CarrierLeft)
{
    private static readonly int[] Dilutions = [2, 5, 10, 20, 50, 100, 200, 500, 1000];

    internal static Premix? Of(NormalisedFormula formula, IReadOnlyList<long> parts, int index, decimal owed)
    {
        var dilution = Array.Find(Dilutions, d => owed * d >= BatchPlanner.FewSteps);
        if (dilution == 0 || CarrierOf(formula, index) is not { } carrier)
        {
            return null;
        }

        // What the premix and the rest of the carrier weigh together is what both lines weighed, so the batch still adds up.
        var take = (long)decimal.Round(owed * dilution, MidpointRounding.AwayFromZero);
        var left = parts[index] + parts[carrier] - take;
        if (left < 0)
        {
            return null;
        }

        Mass Steps(long count) => new(count * formula.Batch!.ScaleResolution, formula.Batch.Unit.Ucum);
        return new Premix(
            formula.Lines[carrier].Material, dilution, Steps(BatchPlanner.FewSteps), Steps(BatchPlanner.FewSteps * (dilution - 1)), Steps(take), Steps(left));
    }

    internal string Words(string material, NormalisedBatch batch)
    {
        var unit = batch.Unit.Word;
        return $": {Fault.Text(Material.Value)} {unit} of {material} in {Fault.Text(With.Value)} {unit} of {Carrier}; "
            + $"of it {Fault.Text(Take.Value)} {unit} go in, with {Fault.Text(CarrierLeft.Value)} {unit} of {Carrier} left to weigh";
    }

    // The largest line that the material surely mixes with: fats and essential oils in liquid oil, powders in powder.
    private static int? CarrierOf(NormalisedFormula formula, int index)
    {
        var line = formula.Lines[index];
        var kind = line.Ingredient.Kind;
        Func<IngredientKind, bool>? carries = Kinds.IsLipid(kind) || kind == IngredientKind.EssentialOil
            ? k => k is IngredientKind.Oil or IngredientKind.Ester
            : Kinds.IsPowder(kind) || kind == IngredientKind.Colourant ? Kinds.IsPowder : null;
        return carries is null
            ? null
            : formula.Lines.Index()
                .Where(l => l.Index != index && l.Item.Material != line.Material && carries(l.Item.Ingredient.Kind) && !l.Item.IsMixture)
                .OrderByDescending(l => l.Item.Percent)
                .Select(l => (int?)l.Index)
                .FirstOrDefault();
    }
}
