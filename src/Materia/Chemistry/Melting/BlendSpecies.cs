namespace Materia.Chemistry.Melting;

/// <summary>The species of one blend: amounts in the numbering of a <see cref="MeltingSpace"/>, and what else is in it.</summary>
/// <param name="space">The numbering.</param>
/// <param name="moles">Amount of each species [mol per gram of formula].</param>
public sealed class BlendSpecies(MeltingSpace space, double[] moles)
{
    /// <summary>Species rarer than this mole fraction are put together with others that melt alike.</summary>
    private const double Rare = 0.005;

    /// <summary>Below this ln K / θ at the lowest temperature a species adds less than 1e-5 of a crystal: it counts as liquid.</summary>
    private const double NeverSolid = -12;
    private const double LowestKelvin = 263.15;

    /// <summary>Share of the formula that melts and whose species are known [1].</summary>
    public required double FatMass { get; init; }

    /// <summary>Share of powders [1].</summary>
    public required double FillerMass { get; init; }

    /// <summary>Share whose melting is unknown [1].</summary>
    public required double UnknownMass { get; init; }

    /// <summary>The share of what is no powder whose melting is known, 0 to 1; nought when there is nothing but powder.</summary>
    public double Coverage => FatMass > 0 ? Math.Round(FatMass / (FatMass + UnknownMass), 6) : 0;

    /// <summary>What limits the description.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>The components whose melting is unknown, each with the reason.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>Amount of each species [mol per gram of formula].</summary>
    public IReadOnlyList<double> Moles => moles;

    /// <summary>The numbering.</summary>
    public MeltingSpace Space => space;

    /// <summary>How much of each crystallising species is solid at a temperature, by mass on the scale of <see cref="Moles"/> [g].</summary>
    public IReadOnlyList<(int Index, double Mass, double Share)> PureSolids(PhaseEquilibrium equilibrium, double celsius)
    {
        equilibrium.SolidContentAt(celsius);
        var kelvin = celsius + 273.15;
        var total = moles.Sum();
        var solids = new List<(int, double, double)>();
        for (var i = 0; i < moles.Length; i++)
        {
            var pure = space.Species[i];
            if (moles[i] > 0 && pure.Class != CrystalClass.Liquid)
            {
                var melting = pure.MeltingPoint + ClassTable.Of(pure.Class).TemperatureShift + 273.15;
                var logK = 1000 * pure.EnthalpyOfFusion / SpeciesSystem.GasConstant * ((1 / kelvin) - (1 / melting));
                var share = equilibrium.SolidShare(pure.Class, logK, moles[i] / total);
                if (share > 0)
                {
                    solids.Add((i, share * moles[i] * pure.MolarMass, share));
                }
            }
        }

        return solids;
    }

    /// <summary>The system to solve, rare species grouped unless <paramref name="group"/> is false.</summary>
    public SpeciesSystem System(Func<CrystalClass, ClassParameters> parameters, bool group = true)
    {
        double total = 0;
        foreach (var amount in moles)
        {
            total += amount;
        }

        var made = new List<Species>(128);
        double liquid = 0, liquidMass = 0;
        var groups = new RareSpecies();
        for (var i = 0; i < moles.Length; i++)
        {
            if (moles[i] <= 0)
            {
                continue;
            }

            var pure = space.Species[i];
            var p = parameters(pure.Class);
            var melting = pure.MeltingPoint + p.TemperatureShift + 273.15;
            var enthalpy = 1000 * pure.EnthalpyOfFusion;
            if (pure.Class == CrystalClass.Liquid || enthalpy / SpeciesSystem.GasConstant * ((1 / LowestKelvin) - (1 / melting)) < NeverSolid * Math.Max(p.MixingWeight, 0.3))
            {
                liquid += moles[i];
                liquidMass += moles[i] * pure.MolarMass;
            }
            else if (!group || p.MixingWeight <= 0 || moles[i] > Rare * total)
            {
                made.Add(new Species(pure.Class, moles[i], pure.MolarMass, melting, enthalpy));
            }
            else
            {
                groups.Add(pure.Class, p.MixingWeight, moles[i], pure.MolarMass, melting, enthalpy);
            }
        }

        groups.AddTo(made);
        if (liquid > 0)
        {
            made.Add(new Species(CrystalClass.Liquid, liquid, liquidMass / liquid, double.PositiveInfinity, 0));
        }

        return new SpeciesSystem(made, parameters);
    }
}
