namespace Materia.Chemistry.Melting;

/// <summary>Finds which species hold the last of the solid, and which ingredients bring them.</summary>
internal static class LastSpecies
{
    private const int Most = 3;

    public static IReadOnlyList<LastToMelt> Of(Blend blend, BlendSpecies species, SolidContentCurve curve)
    {
        var level = 2 * MeltingSum.ClearLevel(curve);
        if (level <= 0 || curve.TemperatureAt(level) is not { } temperature)
        {
            return [];
        }

        var parts = species.PureSolids(curve.Equilibrium, temperature);
        var total = parts.Sum(p => p.Mass);
        return [.. parts
            .OrderByDescending(p => p.Mass)
            .Take(Most)
            .Where(p => p.Mass > 0.05 * total)
            .Select(p => new LastToMelt(species.Space.Species[p.Index].Name, p.Mass / total, Ingredients(blend, species.Space, p.Index)))];
    }

    private static string[] Ingredients(Blend blend, MeltingSpace space, int index) =>
    [
        .. blend.Components
            .Select(c => (c.Name, Amount: c.MassFraction * space.AmountOf(c.Ingredient, index)))
            .Where(p => p.Amount > 0)
            .GroupBy(p => p.Name, p => p.Amount)
            .OrderByDescending(g => g.Sum())
            .Select(g => g.Key),
    ];
}
