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

        // The greatest few in order, as they are met.
        var best = new List<(double Mass, int Index)>(Most + 1);
        double total = 0;
        species.ForEachSolid(curve.Equilibrium, temperature, (i, mass, _) =>
        {
            total += mass;
            var place = best.FindIndex(b => b.Mass < mass);
            best.Insert(place < 0 ? best.Count : place, (mass, i));
            if (best.Count > Most)
            {
                best.RemoveAt(Most);
            }
        });
        return [.. best
            .Where(b => b.Mass > 0.05 * total)
            .Select(b => new LastToMelt(species.Space.Species[b.Index].Name, b.Mass / total, Ingredients(blend, species.Space, b.Index)))];
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
