using Materia.Catalogue.Needs;

namespace Materia.Formulation.Needs;

/// <summary>Finds needs that cannot go together.</summary>
internal static class NeedContradictions
{
    /// <summary>Needs that say of each other that they exclude one another at one place.</summary>
    public static IEnumerable<NeedContradiction> Opposed(IReadOnlyList<Need> needs)
    {
        for (var i = 0; i < needs.Count; i++)
        {
            for (var j = i + 1; j < needs.Count; j++)
            {
                if (needs[i].Opposes == needs[j].Id || needs[j].Opposes == needs[i].Id)
                {
                    yield return new(
                        [needs[i].Id, needs[j].Id],
                        $"{needs[i].Name} and {needs[j].Name} are opposites. Choose the one that leads where this product goes, or make two products.");
                }
            }
        }
    }

    /// <summary>Sets that one need favours and another avoids or leaves out.</summary>
    public static IEnumerable<NeedContradiction> OfScopes(IReadOnlyList<NeedPreference> preferences, IReadOnlyList<NeedExclusion> exclusions)
    {
        foreach (var favoured in preferences.Where(p => p.Favoured))
        {
            var against = preferences.Where(p => !p.Favoured && p.Scope.Text == favoured.Scope.Text).Select(p => (p.Because, Word: "avoided"))
                .Concat(exclusions.Where(e => e.Scope.Text == favoured.Scope.Text).Select(e => (e.Because, Word: "left out")));
            foreach (var (because, word) in against)
            {
                string[] keys = [.. favoured.Because.Concat(because).Select(b => b.Need).Distinct(StringComparer.Ordinal)];
                yield return new(keys, $"{favoured.Scope.Text} is favoured for {favoured.Because[0].Need} and {word} for {because[0].Need}; decide which counts more.");
            }
        }
    }
}
