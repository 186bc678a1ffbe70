using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Limits;

/// <summary>
/// Substances that law allows as a preservative and, by another entry, for another purpose: salicylic acid, the quaternary salts of
/// conditioners, benzyl alcohol. A share over the preservative's limit breaks it only when it was added to preserve, which a formula
/// does not say.
/// </summary>
internal static class OtherUse
{
    private const string Note =
        "Only what is added to preserve counts here; another entry of the same law allows the substance for another purpose, and stands among the findings. Above this share the product must show that other purpose.";

    /// <summary>The finding of <paramref name="limit"/>, open where it would be exceeded and another entry allows the substance.</summary>
    public static LimitFinding Weigh(LimitFinding finding, Limit limit, IReadOnlyList<Limit> binding)
    {
        if (limit.Kind != LimitKind.Preservative || finding.Status != LimitStatus.Exceeded || limit.MaxPercent is null or 0)
        {
            return finding;
        }

        return binding.Any(other => other.Kind == LimitKind.Restricted && other.Authority == limit.Authority && SharesMember(other, limit))
            ? finding with { Status = LimitStatus.Unknown, Notes = [.. finding.Notes, Note] }
            : finding;
    }

    private static bool SharesMember(Limit a, Limit b) =>
        a.Members.Any(m => m.Cas is { } cas && b.Members.Any(n => n.Cas == cas));
}
