namespace Materia.Chemistry.Melting;

/// <summary>
/// The species of a blend as columns, grouped by class, whatever the parameters: rare species that melt alike stand together, and
/// what never crystallises in the range looked at is one sum of liquid. Several systems, one for each set of parameters, share them.
/// </summary>
internal sealed class SpeciesColumns
{
    /// <summary>A species below this mole fraction of everything is rare, one below the second very rare.</summary>
    private const double Rare = 0.005;
    private const double VeryRare = 0.0003;

    /// <summary>ln K / θ at the lowest temperature below which a species adds less than 1e-6 of a crystal.</summary>
    private const double NeverSolid = -14;

    /// <summary>ln K at the lowest temperature below which a species that crystallises alone never does; nought but for the shifts of the band.</summary>
    private const double NeverAlone = -1;
    private const double LowestKelvin = 263.15;

    // Most blends come to fewer entries than this, however many species they hold.
    private const int UsualRoom = 192;

    private SpeciesColumns(int species, int members)
    {
        var room = Math.Min(species, UsualRoom);
        Fraction = new double[room];
        LogFraction = new double[room];
        MeltingPoint = new double[room];
        EnthalpyOverR = new double[room];
        SolidMass = new double[room];
        FirstMember = new int[room + 1];
        Member = new double[members];
    }

    /// <summary>Crystallising species and groups of species.</summary>
    public int Count { get; private set; }

    /// <summary>Mole fraction of everything.</summary>
    public double[] Fraction { get; private set; }

    /// <summary>Its logarithm.</summary>
    public double[] LogFraction { get; private set; }

    /// <summary>Melting point without any shift [K].</summary>
    public double[] MeltingPoint { get; private set; }

    /// <summary>Enthalpy of fusion over the gas constant [K].</summary>
    public double[] EnthalpyOverR { get; private set; }

    /// <summary>Molar mass over the mean molar mass of everything.</summary>
    public double[] SolidMass { get; private set; }

    /// <summary>Where the members of each entry begin in <see cref="Member"/>; one more entry than there are species. A single species has none.</summary>
    public int[] FirstMember { get; private set; }

    /// <summary>The shares of the members of a group, together 1.</summary>
    public double[] Member { get; }

    /// <summary>The classes, in order, with the range of entries of each.</summary>
    public List<(CrystalClass Class, int Start, int End, double Amount)> Classes { get; } = [];

    /// <summary>Mean molar mass of everything, liquid species included [g/mol].</summary>
    public double MeanMolarMass { get; private set; }

    /// <summary>Lays out single species as they stand.</summary>
    public static SpeciesColumns Of(IReadOnlyCollection<Species> species)
    {
        var columns = new SpeciesColumns(species.Count, 0);
        var total = species.Sum(s => s.Moles);
        columns.MeanMolarMass = total > 0 ? species.Sum(s => s.Moles * s.MolarMass) / total : 0;
        foreach (var s in species.Where(s => s.Class != CrystalClass.Liquid && s.Moles > 0).OrderBy(s => s.Class))
        {
            columns.Add(s.Class, s.Moles / total, s.MolarMass, s.MeltingPoint, s.EnthalpyOfFusion);
        }

        return columns;
    }

    /// <summary>Lays out the species of a blend for the curves of one model, rare ones grouped unless crystals are pure, since species that crystallise alone cannot stand in for each other.</summary>
    public static SpeciesColumns Of(MeltingSpace space, ReadOnlySpan<double> moles, MeltingModel model)
    {
        var group = model != MeltingModel.PureCrystals;
        double total = 0, mass = 0;
        var present = 0;
        for (var i = 0; i < moles.Length; i++)
        {
            total += moles[i];
            mass += moles[i] * space.Species[i].MolarMass;
            present += moles[i] > 0 ? 1 : 0;
        }

        var columns = new SpeciesColumns(present, group ? present : 0) { MeanMolarMass = mass / total };
        using var bins = new RareSpecies(space);
        var current = CrystalClass.Liquid;
        var never = 0.0;
        for (var i = 0; i < moles.Length; i++)
        {
            var pure = space.Species[i];
            if (pure.Class != current)
            {
                // Species stand in the order of their classes, so a class is whole when the next begins.
                bins.FlushInto(columns, current);
                current = pure.Class;

                // The firm edge mixes most, which lets the most in.
                never = Band.Firm(model)(current).MixingWeight is > 0 and var weight ? NeverSolid * weight : NeverAlone;
            }

            var fraction = moles[i] / total;
            if (fraction <= 0 || pure.Class == CrystalClass.Liquid || pure.LogKAt(LowestKelvin) < never)
            {
                continue;
            }

            if (!group || fraction > Rare || ClassTable.Of(pure.Class).MixingWeight <= 0)
            {
                columns.Add(pure.Class, fraction, pure.MolarMass, pure.MeltingPoint + 273.15, 1000 * pure.EnthalpyOfFusion);
            }
            else
            {
                bins.Add(i, fraction, veryRare: fraction < VeryRare);
            }
        }

        bins.FlushInto(columns, current);
        return columns;
    }

    /// <summary>Adds a species, or a group whose members' shares follow.</summary>
    /// <param name="class">The class, the same as or after that of the entry before.</param>
    /// <param name="fraction">Mole fraction of everything.</param>
    /// <param name="molarMass">Molar mass [g/mol].</param>
    /// <param name="melting">Melting point [K].</param>
    /// <param name="enthalpy">Enthalpy of fusion [J/mol].</param>
    public void Add(CrystalClass @class, double fraction, double molarMass, double melting, double enthalpy)
    {
        if (Count == Fraction.Length)
        {
            Grow();
        }

        Fraction[Count] = fraction;
        LogFraction[Count] = Math.Log(fraction);
        MeltingPoint[Count] = melting;
        EnthalpyOverR[Count] = enthalpy / SpeciesSystem.GasConstant;
        SolidMass[Count] = molarMass / MeanMolarMass;
        FirstMember[Count + 1] = FirstMember[Count];
        if (Classes.Count > 0 && Classes[^1].Class == @class)
        {
            var (_, start, _, amount) = Classes[^1];
            Classes[^1] = (@class, start, Count + 1, amount + fraction);
        }
        else
        {
            Classes.Add((@class, Count, Count + 1, fraction));
        }

        Count++;
    }

    /// <summary>Adds a member's share to the entry added last.</summary>
    public void AddMember(double share) => Member[FirstMember[Count]++] = share;

    /// <summary>What the mixing of a group's members takes off its ln K, at a mixing weight; 0 for a single species.</summary>
    public double LogPenalty(int entry, double mixingWeight)
    {
        var members = Member.AsSpan(FirstMember[entry], FirstMember[entry + 1] - FirstMember[entry]);
        if (members.Length < 2 || mixingWeight <= 0)
        {
            return 0;
        }

        double sum = 0;
        foreach (var share in members)
        {
            sum += Math.Pow(share, 1 / mixingWeight);
        }

        return mixingWeight * Math.Log(sum);
    }

    private void Grow()
    {
        var room = 2 * Math.Max(Count, 8);
        (Fraction, LogFraction, MeltingPoint) = (Resized(Fraction, room), Resized(LogFraction, room), Resized(MeltingPoint, room));
        (EnthalpyOverR, SolidMass, FirstMember) = (Resized(EnthalpyOverR, room), Resized(SolidMass, room), Resized(FirstMember, room + 1));
    }

    private static T[] Resized<T>(T[] array, int room)
    {
        Array.Resize(ref array, room);
        return array;
    }
}
