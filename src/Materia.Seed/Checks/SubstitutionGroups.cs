using Materia.Catalogue;
using Materia.Seed.Reading;
using Materia.Seed.Tables;

namespace Materia.Seed.Checks;

/// <summary>Substitution groups: each has members and among them one reference; each membership names a group that exists, once, and a swap ratio that can be.</summary>
internal static class SubstitutionGroups
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var members = seed.SubstitutionGroups.Select(g => g.Value.Id).Distinct(StringComparer.Ordinal)
            .ToDictionary(id => id, _ => new List<Member>(), StringComparer.Ordinal);
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            foreach (var (membership, at) in Statements.Items(ingredient.SubstitutionGroups, place, "substitutionGroups"))
            {
                if (members.TryGetValue(membership.Group, out var group))
                {
                    group.Add(new(ingredient.Id, membership.Reference, at));
                }
                else if (seed.HasSubstitutionGroups)
                {
                    faults.Add(at, $"group \"{membership.Group}\" is not in {SubstitutionGroupTable.Path}; add a row or correct the key");
                }

                if (!seen.Add(membership.Group))
                {
                    faults.Add(at, $"group \"{membership.Group}\" stands twice; an ingredient is a member once");
                }

                CheckRatio(membership, at, faults);
            }
        }

        foreach (var (group, at) in seed.SubstitutionGroups)
        {
            CheckReference(group.Id, members[group.Id], at, seed.IsComplete, faults);
        }
    }

    private static void CheckRatio(SubstitutionMembership membership, Place at, FaultList faults)
    {
        if (membership.SwapRatio is <= 0)
        {
            faults.Add(at, "swapRatio is not above 0; give the mass that replaces one part of the group's reference, or leave it out");
        }
        else if (membership is { Reference: true, SwapRatio: not (null or 1) })
        {
            faults.Add(at, "the reference of a group replaces itself part for part; leave swapRatio out");
        }
    }

    private static void CheckReference(string group, List<Member> members, Place at, bool isComplete, FaultList faults)
    {
        var references = members.FindAll(m => m.IsReference);
        foreach (var second in references.Skip(1))
        {
            faults.Add(second.Place, $"{second.Ingredient} is a second reference of {group} beside {references[0].Ingredient}; keep one");
        }

        // What could not be read may be the member that is missed.
        if (isComplete && members.Count == 0)
        {
            faults.Add(at, $"no ingredient is a member of {group}; add one or remove the row");
        }
        else if (isComplete && references.Count == 0)
        {
            faults.Add(at, $"none of the {members.Count} members of {group} is its reference; mark one with \"reference\": true");
        }
    }

    private sealed record Member(string Ingredient, bool IsReference, Place Place);
}
