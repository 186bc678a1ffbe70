using Materia.Regulation.Lookup;

namespace Materia.Api.Reference;

/// <summary>Something of what was asked for that limits name.</summary>
/// <param name="Name">The substance, part or ingredient.</param>
/// <param name="As">Whether it is what was asked for itself, a part or a constituent of it.</param>
/// <param name="Limits">The keys of the limits that name it.</param>
public sealed record NamedSubstance(string Name, MatchedAs As, IReadOnlyList<string> Limits)
{
    /// <summary>Gathers <paramref name="matches"/> by what they name, in the order of the table.</summary>
    public static IReadOnlyList<NamedSubstance> Of(IReadOnlyList<LimitMatch> matches) =>
        [.. matches.GroupBy(m => (m.Name, m.As)).Select(g => new NamedSubstance(g.Key.Name, g.Key.As, [.. g.Select(m => m.Limit.Id)]))];
}
