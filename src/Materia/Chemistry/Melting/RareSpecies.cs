using System.Buffers;

namespace Materia.Chemistry.Melting;

/// <summary>
/// Puts rare species together that melt alike: same class, melting points within one bin and enthalpies within one; very rare ones
/// share wider bins. No mass is lost. With shares p of the group its K is lowered by (Σ p^(1/θ))^θ, exact while little of it is
/// solid: each member would have met its equals less often than one species meets itself.
/// </summary>
internal sealed class RareSpecies : IDisposable
{
    private const int None = -1;
    private readonly MeltingSpace space;
    private readonly int[] firstOfBin;
    private readonly int[] next;
    private readonly double[] fraction;

    public RareSpecies(MeltingSpace space)
    {
        this.space = space;
        firstOfBin = ArrayPool<int>.Shared.Rent(space.BinCount);
        firstOfBin.AsSpan(0, space.BinCount).Fill(None);
        next = ArrayPool<int>.Shared.Rent(space.Species.Count);
        fraction = ArrayPool<double>.Shared.Rent(space.Species.Count);
    }

    /// <summary>Puts a species, with its mole fraction of everything, into its bin.</summary>
    public void Add(int species, double amount, bool veryRare)
    {
        ref var first = ref firstOfBin[space.BinOf(species, veryRare)];
        next[species] = first;
        fraction[species] = amount;
        first = species;
    }

    /// <summary>Adds the groups of a class to the columns and empties its bins.</summary>
    public void FlushInto(SpeciesColumns columns, CrystalClass @class)
    {
        var (start, end) = space.BinsOf(@class);
        for (var bin = start; bin < end; bin++)
        {
            if (firstOfBin[bin] == None)
            {
                continue;
            }

            double amount = 0, mass = 0, melting = 0, enthalpy = 0;
            for (var i = firstOfBin[bin]; i != None; i = next[i])
            {
                var pure = space.Species[i];
                amount += fraction[i];
                mass += fraction[i] * pure.MolarMass;
                melting += fraction[i] * pure.MeltingPoint;
                enthalpy += fraction[i] * pure.EnthalpyOfFusion;
            }

            columns.Add(@class, amount, mass / amount, (melting / amount) + 273.15, 1000 * enthalpy / amount);
            for (var i = firstOfBin[bin]; i != None; i = next[i])
            {
                columns.AddMember(fraction[i] / amount);
            }

            firstOfBin[bin] = None;
        }
    }

    /// <summary>Gives the work space back.</summary>
    public void Dispose()
    {
        ArrayPool<int>.Shared.Return(firstOfBin);
        ArrayPool<int>.Shared.Return(next);
        ArrayPool<double>.Shared.Return(fraction);
    }
}
