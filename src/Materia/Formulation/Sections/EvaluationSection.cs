namespace Materia.Formulation.Sections;

/// <summary>A part of an evaluation that can be asked for by its name.</summary>
public abstract class EvaluationSection
{
    private protected EvaluationSection(string name, string summary)
    {
        Name = name;
        Summary = summary;
    }

    /// <summary>The member of the evaluation, and the word in <c>?sections=</c>.</summary>
    public string Name { get; }

    /// <summary>What it tells, in a sentence.</summary>
    public string Summary { get; }

    /// <summary>The type of its result.</summary>
    public abstract Type ResultType { get; }

    internal abstract object Compute(EvaluationInput input);
}

/// <summary>A part of an evaluation whose result is a <typeparamref name="T"/>.</summary>
/// <typeparam name="T">The result.</typeparam>
/// <param name="name">The member of the evaluation.</param>
/// <param name="summary">What it tells, in a sentence.</param>
/// <param name="compute">Works it out.</param>
public sealed class EvaluationSection<T>(string name, string summary, Func<EvaluationInput, T> compute) : EvaluationSection(name, summary)
    where T : class
{
    /// <inheritdoc/>
    public override Type ResultType => typeof(T);

    internal override object Compute(EvaluationInput input) => compute(input);
}
