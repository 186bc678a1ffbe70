using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Lookup;

/// <summary>A limit with what it names of that which was asked for.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Name">The substance, part or ingredient that it names, as the catalogue calls it.</param>
/// <param name="As">How it names it.</param>
public sealed record LimitMatch(Limit Limit, string Name, MatchedAs As);
