using System.Collections.Frozen;

namespace Materia.Regulation.Cautioning;

/// <summary>The cautions that a formula calls for, and no others.</summary>
public static class Cautions
{
    private static readonly CautionRule[] Rules = [.. UsingCautions.All, .. MakingCautions.All];

    /// <summary>Keys of the sources of the rules, and of those in which recalled ones should be looked up.</summary>
    public static IReadOnlyList<string> Sources { get; } = [.. Rules.SelectMany(r => new[] { r.Source, r.CheckIn }).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    // Talc stands among the cautions of making and concerns whoever dusts with it as well.
    private static readonly FrozenSet<string> OfMakingOnly =
        MakingCautions.All.Where(r => !r.Who.Contains("or uses it", StringComparison.Ordinal)).Select(r => r.Hazard).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a caution concerns whoever uses the finished product, and not only whoever makes it.</summary>
    public static bool ConcernsUse(CautionFinding caution)
    {
        ArgumentNullException.ThrowIfNull(caution);
        return !OfMakingOnly.Contains(caution.Hazard);
    }

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
