using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Preserving;
using Materia.Formulation.Batches;
using Materia.Formulation.Costs;
using Materia.Formulation.Normalising;
using Materia.Formulation.Sections;
using Materia.Regulation;

namespace Materia.Formulation;

/// <summary>A formula that holds together: known materials, and percentages that add up to exactly 100.</summary>
public sealed class NormalisedFormula
{
    /// <summary>The most lines that a formula may have.</summary>
    public const int MostLines = 200;

    private NormalisedFormula(Formula submitted, Release release, IReadOnlyList<NormalisedLine> lines, NormalisedBatch? batch, NormalisedPrices? prices, IReadOnlyList<string> notes)
    {
        Title = submitted.Title;
        Use = submitted.Use is null ? null : release.FindUse(submitted.Use);
        Market = submitted.Market;
        Lines = lines;
        Batch = batch;
        Prices = prices;
        OverrunPercent = submitted.Whip?.OverrunPercent;
        Ph = submitted.Ph is { } ph ? PhRange.Of(ph.Value, ph.Low, ph.High) : null;
        Notes = notes;
    }

    /// <summary>The title, where one was given.</summary>
    public string? Title { get; }

    /// <summary>What the product is for, where it was given.</summary>
    public ProductUse? Use { get; }

    /// <summary>The market, where one was given.</summary>
    public Market? Market { get; }

    /// <summary>The lines, in the order given.</summary>
    public IReadOnlyList<NormalisedLine> Lines { get; }

    /// <summary>How much to make, where it was given.</summary>
    public NormalisedBatch? Batch { get; }

    /// <summary>What the materials cost, where that was given.</summary>
    public NormalisedPrices? Prices { get; }

    /// <summary>The gain in volume by whipping [%], where it was given.</summary>
    public decimal? OverrunPercent { get; }

    /// <summary>The measured pH, where it was given.</summary>
    public PhRange? Ph { get; }

    /// <summary>What was taken otherwise than it was written, in sentences.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>Checks <paramref name="formula"/> and works out its percentages.</summary>
    /// <returns>The normalised formula, or all its faults (at most <see cref="FaultList.Limit"/>).</returns>
    public static Normalisation Create(Formula formula, Release release)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(release);
        var faults = new FaultList();
        List<string> notes = [];
        if (formula.Lines.Count is 0 or > MostLines)
        {
            faults.Add("/lines", formula.Lines.Count == 0
                ? "A formula needs at least one line, such as { \"ingredient\": \"shea-butter\", \"percent\": 100 }."
                : $"A formula has at most {MostLines} lines, and this one has {formula.Lines.Count}. Add up lines of the same material, or split the formula.");
            return new Normalisation(null, faults.All);
        }

        HeadRules.Check(formula, release, faults);
        var materials = new MaterialRules(release, faults, notes);
        var found = formula.Lines.Select((line, i) => materials.Find(line.Ingredient, line.Own, $"/lines/{i}")).ToList();
        var percentages = LineAmounts.Percentages(formula.Lines, faults, notes);
        var batch = BatchRules.Check(formula.Batch, faults, notes);
        var prices = new PriceRules(release, faults).Check(formula);
        if (faults.Any || percentages is null)
        {
            return new Normalisation(null, faults.All);
        }

        var lines = formula.Lines.Select((line, i) => new NormalisedLine(line, found[i]!, percentages[i])).ToList();
        foreach (var twice in lines.CountBy(l => l.Material).Where(p => p.Value > 1))
        {
            notes.Add($"\"{twice.Key}\" stands on {twice.Value} lines; results count them together.");
        }

        return new Normalisation(new NormalisedFormula(formula, release, lines, batch, prices, notes), []);
    }

    /// <summary>The materials with their mass fractions, lines of the same material together, mixtures taken apart.</summary>
    public Blend Blend(Release release, EvaluationOptions? options = null)
    {
        options ??= new();
        return new Blend(
            [.. Materials([.. Lines.Select(l => l.Percent)]).Select(m => new BlendComponent(m.Ingredient.Id, (double)(m.Percent / 100), m.Ingredient))],
            release, options.Explain, options.MeltingModel, options.ExplainAt);
    }

    /// <summary>The formula as rules see it: the same materials, with exact shares.</summary>
    public RegulatedFormula Regulated(Release release, DateOnly asOf) => Regulated(release, asOf, [.. Lines.Select(l => l.Percent)]);

    /// <summary>The same with other shares of the lines [%], such as those that a scale allows.</summary>
    internal RegulatedFormula Regulated(Release release, DateOnly asOf, IReadOnlyList<decimal> percents) =>
        new([.. Materials(percents).Select(m => new RegulatedLine(m.Ingredient.Id, m.Percent, m.Ingredient))], release, Use, MarketRules.Of(Market), asOf);

    private List<(decimal Percent, Ingredient Ingredient)> Materials(IReadOnlyList<decimal> percents)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        var materials = new List<(decimal Percent, Ingredient Ingredient)>();
        foreach (var (part, percent) in Lines.Zip(percents).SelectMany(l => l.First.Parts.Select(p => (p, p.Share * l.Second))))
        {
            if (places.TryGetValue(part.Ingredient.Id, out var place))
            {
                materials[place] = (materials[place].Percent + percent, part.Ingredient);
            }
            else
            {
                places.Add(part.Ingredient.Id, materials.Count);
                materials.Add((percent, part.Ingredient));
            }
        }

        return materials;
    }
}

/// <summary>What came of normalising a formula: the formula or its faults.</summary>
/// <param name="Formula">The normalised formula; <see langword="null"/> when there is any fault.</param>
/// <param name="Faults">What has to be put right.</param>
public sealed record Normalisation(NormalisedFormula? Formula, IReadOnlyList<FormulaFault> Faults);
