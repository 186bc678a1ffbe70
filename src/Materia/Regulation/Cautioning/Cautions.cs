namespace Materia.Regulation.Cautioning;

/// <summary>The cautions that a formula calls for, and no others.</summary>
public static class Cautions
{
    private static readonly CautionRule[] Rules = [.. UsingCautions.All, .. MakingCautions.All];

    /// <summary>Keys of the sources of the rules, and of those in which recalled ones should be looked up.</summary>
    public static IReadOnlyList<string> Sources { get; } = [.. Rules.SelectMany(r => new[] { r.Source, r.CheckIn }).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>The cautions: on the product as a whole and in use first, then in making, then what the catalogue states of the materials.</summary>
    public static IReadOnlyList<CautionFinding> Of(RegulatedFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var seen = new CautionedFormula(formula);
        var stated = StatedCautions.Of(seen).ToList();

        // What a limit of the release says of a hazard takes the place of the general rule on it.
        return [.. Rules.Select(r => r.Apply(seen)).OfType<CautionFinding>().Where(c => !stated.Exists(s => s.Hazard == c.Hazard)), .. stated];
    }
}
