namespace Materia.Chemistry.Melting;

/// <summary>The species of one blend: amounts in the numbering of a <see cref="MeltingSpace"/>, and what else is in it.</summary>
/// <param name="space">The numbering.</param>
/// <param name="moles">Amount of each species [mol per gram of formula].</param>
public sealed class BlendSpecies(MeltingSpace space, double[] moles)
{
    private SpeciesColumns? columns;

    /// <summary>The model that the blend is worked out with.</summary>
    public required MeltingModel Model { get; init; }

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

    /// <summary>Tells of each crystallising species how much of it is solid at a temperature, after a system of grouped ones was solved there.</summary>
    /// <param name="equilibrium">The equilibrium of the blend's system.</param>
    /// <param name="celsius">The temperature [Cel].</param>
    /// <param name="tell">Takes the species' number, the mass of its solid on the scale of <see cref="Moles"/> [g], and the share of it that is solid [1].</param>
    public void ForEachSolid(PhaseEquilibrium equilibrium, double celsius, Action<int, double, double> tell)
    {
        equilibrium.SolidContentAt(celsius);
        var kelvin = celsius + 273.15;
        var total = moles.Sum();
        for (var i = 0; i < moles.Length; i++)
        {
            var pure = space.Species[i];
            if (moles[i] > 0 && pure.Class != CrystalClass.Liquid)
            {
                var logK = pure.LogKAt(kelvin, ClassTable.Of(pure.Class).TemperatureShift);
                var share = equilibrium.SolidShare(pure.Class, logK, moles[i] / total);
                if (share > 0)
                {
                    tell(i, share * moles[i] * pure.MolarMass, share);
                }
            }
        }
    }

    /// <summary>The system to solve.</summary>
    /// <param name="parameters">The parameters of the blend's model, or of an edge of its band.</param>
    public SpeciesSystem System(Func<CrystalClass, ClassParameters> parameters) => new(columns ??= SpeciesColumns.Of(space, moles, Model), parameters);
}
