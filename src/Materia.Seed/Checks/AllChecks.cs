using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>The list of checks, one class for each concern.</summary>
internal static class AllChecks
{
    private static readonly Action<LoadedSeed, FaultList>[] Checks =
    [
        Identities.Check,
        FormerIds.Check,
        TableKeys.Check,
        SourceKeys.Check,
        EvidenceRules.Check,
        CheckDigits.Check,
        Names.Check,
        DuplicateNames.Check,
        LanguageTags.Check,
        Figures.Check,
        Repeats.Check,
        UsedMarks.Check,
        Profiles.Check,
        Triacylglycerols.Check,
        Constituents.Check,
        Parts.Check,
        PartCycles.Check,
        UsageLevels.Check,
        Handling.Check,
        SubstitutionGroups.Check,
        RegulatedMembers.Check,
        Limits.Check,
        LimitScopes.Check,
        Allergens.Check,
        Needs.Check,
        ComedogenicGrades.Check,
        MolarMasses.Check,
        Texts.Check,
        Sentences.Check,
    ];

    /// <summary>Runs every check over <paramref name="seed"/>.</summary>
    public static void Run(LoadedSeed seed, FaultList faults)
    {
        foreach (var check in Checks)
        {
            check(seed, faults);
        }
    }
}
