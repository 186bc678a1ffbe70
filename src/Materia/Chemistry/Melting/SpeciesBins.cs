namespace Materia.Chemistry.Melting;

/// <summary>Numbers bins of melting point and enthalpy for every species of a space, those of one class side by side; narrow ones for rare species and wide ones for very rare ones.</summary>
internal sealed class SpeciesBins
{
    private static readonly (double Melting, double Enthalpy) Narrow = (3, 25);
    private static readonly (double Melting, double Enthalpy) Wide = (8, 60);

    private readonly int[] narrow;
    private readonly int[] wide;
    private readonly Dictionary<CrystalClass, (int Start, int End)> ofClass = [];

    public SpeciesBins(IReadOnlyList<PureSpecies> species)
    {
        narrow = new int[species.Count];
        wide = new int[species.Count];
        foreach (var members in species.Index().GroupBy(p => p.Item.Class))
        {
            var start = Count;
            Number(members, Narrow, narrow);
            Number(members, Wide, wide);
            ofClass[members.Key] = (start, Count);
        }
    }

    /// <summary>How many bins there are.</summary>
    public int Count { get; private set; }

    /// <summary>The bin of a species.</summary>
    public int Of(int species, bool veryRare) => veryRare ? wide[species] : narrow[species];

    /// <summary>The bins of a class: from the first up to, not including, the second.</summary>
    public (int Start, int End) Of(CrystalClass @class) => ofClass.GetValueOrDefault(@class);

    private void Number(IEnumerable<(int Index, PureSpecies Item)> members, (double Melting, double Enthalpy) width, int[] bins)
    {
        foreach (var bin in members.GroupBy(p => ((int)Math.Floor(p.Item.MeltingPoint / width.Melting), (int)(p.Item.EnthalpyOfFusion / width.Enthalpy))))
        {
            foreach (var (index, _) in bin)
            {
                bins[index] = Count;
            }

            Count++;
        }
    }
}
