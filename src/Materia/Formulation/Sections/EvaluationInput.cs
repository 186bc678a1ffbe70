using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Regulation;

namespace Materia.Formulation.Sections;

/// <summary>What sections work on. Each section's result is worked out once, however many others ask for it.</summary>
public sealed class EvaluationInput
{
    private readonly Dictionary<EvaluationSection, object> results = [];
    private RegulatedFormula? regulated;

    internal EvaluationInput(NormalisedFormula formula, Release release, EvaluationOptions options)
    {
        Formula = formula;
        Release = release;
        Explain = options.Explain;
        Blend = formula.Blend(release, options);
        AsOf = options.AsOf ?? DateOnly.FromDateTime(release.Published.UtcDateTime);
    }

    /// <summary>The formula.</summary>
    public NormalisedFormula Formula { get; }

    /// <summary>The release.</summary>
    public Release Release { get; }

    /// <summary>Whether results carry their steps.</summary>
    public bool Explain { get; }

    /// <summary>The formula's materials by mass.</summary>
    public Blend Blend { get; }

    /// <summary>The day on which the product is placed on the market.</summary>
    public DateOnly AsOf { get; }

    /// <summary>The formula as rules see it.</summary>
    public RegulatedFormula Regulated => regulated ??= Formula.Regulated(Release, AsOf);

    /// <summary>The result of <paramref name="section"/>.</summary>
    public T Of<T>(EvaluationSection<T> section)
        where T : class => (T)Of((EvaluationSection)section);

    internal object Of(EvaluationSection section)
    {
        if (!results.TryGetValue(section, out var result))
        {
            result = section.Compute(this);
            results.Add(section, result);
        }

        return result;
    }
}
