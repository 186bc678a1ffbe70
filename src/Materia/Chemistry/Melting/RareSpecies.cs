using System.Runtime.InteropServices;

namespace Materia.Chemistry.Melting;

/// <summary>
/// Puts rare species together that melt alike: same class, melting points within one bin and enthalpies within one. No mass
/// is lost. With shares p of the group its K is lowered by (Σ p^(1/θ))^θ, exact while little of it is solid: each member
/// would have met its equals less often than one species meets itself.
/// </summary>
internal sealed class RareSpecies
{
    /// <summary>Width of a bin of melting points [K].</summary>
    private const double MeltingBin = 3.0;

    /// <summary>Width of a bin of enthalpies [J/mol].</summary>
    private const double EnthalpyBin = 25_000;

    private readonly Dictionary<(CrystalClass Class, int Melting, int Enthalpy), int> byBin = [];
    private readonly List<Group> groups = [];
    private readonly List<(int Group, double Moles)> members = [];

    public void Add(CrystalClass @class, double mixingWeight, double moles, double molarMass, double melting, double enthalpy)
    {
        var bin = (@class, (int)(melting / MeltingBin), (int)(enthalpy / EnthalpyBin));
        if (!byBin.TryGetValue(bin, out var index))
        {
            index = byBin[bin] = groups.Count;
            groups.Add(new Group(@class, mixingWeight));
        }

        ref var group = ref CollectionsMarshal.AsSpan(groups)[index];
        group.Moles += moles;
        group.Mass += moles * molarMass;
        group.Melting += moles * melting;
        group.Enthalpy += moles * enthalpy;
        members.Add((index, moles));
    }

    public void AddTo(List<Species> made)
    {
        var span = CollectionsMarshal.AsSpan(groups);
        foreach (var (index, moles) in members)
        {
            ref var group = ref span[index];
            group.Mixing += Math.Pow(moles / group.Moles, 1 / group.MixingWeight);
        }

        foreach (var g in span)
        {
            made.Add(new Species(g.Class, g.Moles, g.Mass / g.Moles, g.Melting / g.Moles, g.Enthalpy / g.Moles, g.MixingWeight * Math.Log(g.Mixing)));
        }
    }

    private struct Group(CrystalClass @class, double mixingWeight)
    {
        public readonly CrystalClass Class => @class;

        public readonly double MixingWeight => mixingWeight;

        public double Moles { get; set; }

        public double Mass { get; set; }

        public double Melting { get; set; }

        public double Enthalpy { get; set; }

        public double Mixing { get; set; }
    }
}
