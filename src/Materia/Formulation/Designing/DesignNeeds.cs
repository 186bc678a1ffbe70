using Materia.Catalogue;
using Materia.Catalogue.Needs;
using Materia.Formulation.Needs;
using Materia.Formulation.Normalising;
using Materia.Formulation.Optimising;
using Materia.Formulation.Scopes;

namespace Materia.Formulation.Designing;

/// <summary>What the needs of a request add to it.</summary>
/// <param name="Resolved">What follows from them; <see langword="null"/> where none was named.</param>
/// <param name="Targets">Targets on figures that the request itself does not aim at.</param>
/// <param name="Scopes">Sets that are shut out.</param>
/// <param name="MaxComedogenic">The highest comedogenic grade that they allow.</param>
internal sealed record DesignNeeds(ResolvedNeeds? Resolved, IReadOnlyList<DesignTarget> Targets, IReadOnlyList<IngredientScope> Scopes, int? MaxComedogenic)
{
    private const int Most = 30;

    /// <summary>Puts the needs of a request together, and names those that are not known or cannot be met at once.</summary>
    public static DesignNeeds Read(DesignRequest request, Release release, FaultList faults)
    {
        if (request.Needs.Count is 0 or > Most)
        {
            if (request.Needs.Count > Most)
            {
                faults.Add("/needs", $"Name at most {Most} needs.");
            }

            return new(null, [], [], null);
        }

        var resolved = ResolvedNeeds.Of(request.Needs, release);
        for (var i = 0; i < request.Needs.Count; i++)
        {
            if (resolved.Unknown.Contains(request.Needs[i], StringComparer.Ordinal))
            {
                faults.Add($"/needs/{i}", $"\"{Fault.Shorten(request.Needs[i])}\" is not a known need. Known are {string.Join(", ", release.Content.Needs.Select(n => n.Id))}.");
            }
        }

        // A figure that the request aims at itself is decided by it.
        var open = resolved.Targets.Where(t => t.Property != TargetProperty.Comedogenic && !request.Targets.Any(r => Aims(r, t))).ToList();
        foreach (var conflict in open.GroupBy(t => (t.Property, t.Temperature, t.Acid)).Where(g => g.Skip(1).Any()))
        {
            var needs = conflict.SelectMany(t => t.Because.Select(b => b.Need)).ToHashSet(StringComparer.Ordinal);
            var message = resolved.Contradictions.First(c => needs.SetEquals(c.Needs)).Message;
            faults.Add($"/needs/{request.Needs.ToList().FindIndex(needs.Contains)}", message + " A target of the request's own on that figure decides it too.");
        }

        var grade = resolved.Targets.Where(t => t.Property == TargetProperty.Comedogenic).Min(t => t.High);
        return new(
            resolved,
            [.. open.Select(t => new DesignTarget { Property = Property(t.Property), Temperature = t.Temperature, Acid = t.Acid, Low = (decimal?)t.Low, High = (decimal?)t.High, Weight = (decimal)t.Weight })],
            [.. resolved.Exclusions.Select(e => e.Scope)],
            grade is { } most ? (int)most : null);
    }

    private static bool Aims(DesignTarget target, NeedTarget need) =>
        target.Property is { } property && property == Property(need.Property) && target.Temperature == need.Temperature && target.Acid == need.Acid;

    // Both lists have the same words for what a need can aim at; a test holds it.
    private static BlendProperty? Property(TargetProperty property) =>
        KebabCase<BlendProperty>.TryParse(KebabCase<TargetProperty>.Word(property), out var same) ? same : null;
}
