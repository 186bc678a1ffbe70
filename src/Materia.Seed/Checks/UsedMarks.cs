using System.Globalization;
using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>
/// Where several statements of one thing stand side by side, exactly one is marked <c>used</c>; one that stands alone, or
/// that is not computed with, carries no mark.
/// </summary>
internal static class UsedMarks
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            var figures = Statements.Items(ingredient.Properties, place, "properties");
            foreach (var group in figures.GroupBy(f => (f.Value.Property, f.Value.At)))
            {
                Check([.. group.Select(f => (f.Value.Used, f.Place))], Describe(group.Key.Property, group.Key.At), faults);
            }

            var profiles = Statements.Items(ingredient.FattyAcidProfiles, place, "fattyAcidProfiles").ToLookup(p => p.Value.Kind);
            foreach (var group in profiles[ProfileKind.Sample].GroupBy(p => p.Value.Of))
            {
                Check([.. group.Select(p => (p.Value.Used, p.Place))], $"samples of the {KebabCase<ProfilePart>.Word(group.Key)}", faults);
            }

            foreach (var (_, at) in profiles[ProfileKind.Range].Where(p => p.Value.Used))
            {
                faults.Add(at, "a range profile is marked used; computations use samples, take the mark away");
            }

            var fats = Statements.Items(ingredient.TriacylglycerolProfiles, place, "triacylglycerolProfiles").ToList();
            if (fats.Count > 0)
            {
                Check([.. fats.Select(p => (p.Value.Used, p.Place))], "the composition by triacylglycerol", faults);
            }

            var constituents = Statements.Items(ingredient.Constituents, place, "constituents");
            foreach (var group in constituents.GroupBy(c => c.Value.Substance, StringComparer.OrdinalIgnoreCase))
            {
                Check([.. group.Select(c => (c.Value.Used, c.Place))], group.Key, faults);
            }
        }
    }

    private static void Check(IReadOnlyList<(bool Used, Place Place)> group, string what, FaultList faults)
    {
        var used = group.Where(g => g.Used).ToList();
        if (group.Count == 1)
        {
            if (used.Count == 1)
            {
                faults.Add(group[0].Place, $"{what} stands alone and is marked used; take the mark away");
            }
        }
        else if (used.Count == 0)
        {
            faults.Add(group[0].Place, $"{group.Count} statements of {what} and none is marked used; mark the one to compute with");
        }
        else
        {
            foreach (var (_, at) in used.Skip(1))
            {
                faults.Add(at, $"a second statement of {what} is marked used; keep one mark");
            }
        }
    }

    private static string Describe(Property property, Conditions? at)
    {
        var word = KebabCase<Property>.Word(property);
        return at?.Temperature is { } temperature
            ? string.Create(CultureInfo.InvariantCulture, $"{word} at {temperature} Cel")
            : word;
    }
}
