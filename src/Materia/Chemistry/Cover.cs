namespace Materia.Chemistry;

/// <summary>Keeps count of the mass that a result rests on and of what it lacks.</summary>
internal sealed class Cover
{
    /// <summary>The share of missing mass up to which a result is only annotated.</summary>
    public const double Annotated = 0.05;

    private readonly List<string> missing = [];
    private double covered;
    private double concerned;

    /// <summary>The share of the mass concerned that has data, 0 to 1; nought when nothing is concerned.</summary>
    public double Share => concerned > 0 ? Math.Round(covered / concerned, 6) : 0;

    /// <summary>The mass concerned.</summary>
    public double Concerned => concerned;

    /// <summary>Counts a component.</summary>
    public void Add(BlendComponent component, bool hasData)
    {
        if (component.MassFraction <= 0)
        {
            return;
        }

        concerned += component.MassFraction;
        if (hasData)
        {
            covered += component.MassFraction;
        }
        else if (!missing.Contains(component.Name))
        {
            missing.Add(component.Name);
        }
    }

    /// <summary>Says what is missing, and flags a result that lacks more than a twentieth.</summary>
    /// <param name="warnings">Where to say it.</param>
    /// <param name="what">What is missing, such as <c>iodine value</c>.</param>
    /// <param name="of">The mass concerned, such as <c>lipid phase</c>.</param>
    public void Warn(List<string> warnings, string what, string of)
    {
        if (missing.Count == 0)
        {
            return;
        }

        var flag = 1 - Share > Annotated ? "Incomplete: no" : "No";
        warnings.Add($"{flag} {what} is held for {Written.List(missing)} ({Written.Percent(1 - Share)} of the {of}); the figure is that of the rest.");
    }

    /// <summary>Why there is no result, or <see langword="null"/> when <paramref name="least"/> is covered.</summary>
    public string? Refusal(double least, string what, string of)
    {
        if (concerned <= 0)
        {
            return $"There is no {of} in the formula.";
        }

        return Share < least
            ? $"Only {Written.Percent(Share)} of the {of} has a known {what}, and {Written.Percent(least)} is needed; none is held for {Written.List(missing)}."
            : null;
    }
}
