using System.Text.RegularExpressions;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>
/// Language tags are well formed as BCP 47 (RFC 5646, section 2.1) has it. Languages of four to eight letters, which the
/// grammar keeps for later and nobody registered, are refused: they are language names that slipped in.
/// </summary>
internal static partial class LanguageTags
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            foreach (var (name, at) in Statements.Items(ingredient.Names, place, "names"))
            {
                if (name.Language is { } tag && !WellFormed().IsMatch(tag))
                {
                    faults.Add(at, $"language \"{tag}\" is no BCP 47 tag; write one such as en, fr or pt-BR");
                }
            }
        }
    }

    [GeneratedRegex(
        """
        ^[a-z]{2,3}(-[a-z]{3}){0,3}         # language, extended language
        (-[a-z]{4})?                        # script
        (-([a-z]{2}|[0-9]{3}))?             # region
        (-([a-z0-9]{5,8}|[0-9][a-z0-9]{3}))*  # variants
        (-[0-9a-wy-z](-[a-z0-9]{2,8})+)*    # extensions
        (-x(-[a-z0-9]{1,8})+)?\z            # private use
        """,
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.IgnorePatternWhitespace | RegexOptions.ExplicitCapture)]
    private static partial Regex WellFormed();
}
