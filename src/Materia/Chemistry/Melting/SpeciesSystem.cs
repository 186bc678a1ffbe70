namespace Materia.Chemistry.Melting;

/// <summary>
/// The species of a blend with the parameters of their classes, ready to be solved. Liquid species are one sum: nothing about them
/// matters but their amount.
/// </summary>
public sealed class SpeciesSystem
{
    internal const double GasConstant = 8.314462618;

    private readonly SpeciesColumns columns;

    /// <summary>Groups and normalises <paramref name="species"/>, whose melting points hold their class's shift already.</summary>
    /// <param name="species">The species; amounts need not add up to anything.</param>
    /// <param name="parameters">How each class crystallises.</param>
    public SpeciesSystem(IReadOnlyCollection<Species> species, Func<CrystalClass, ClassParameters> parameters)
        : this(SpeciesColumns.Of(species), c => parameters(c) with { TemperatureShift = 0 })
    {
    }

    internal SpeciesSystem(SpeciesColumns columns, Func<CrystalClass, ClassParameters> parameters)
    {
        this.columns = columns;
        InverseMelting = new double[columns.Count];
        LogPenalty = new double[columns.Count];
        Classes = new ClassRange[columns.Classes.Count];
        for (var g = 0; g < Classes.Length; g++)
        {
            var (@class, start, end, amount) = columns.Classes[g];
            var p = parameters(@class);
            Classes[g] = new ClassRange(@class, start, end, p, amount);
            for (var i = start; i < end; i++)
            {
                InverseMelting[i] = 1 / (columns.MeltingPoint[i] + p.TemperatureShift);
                LogPenalty[i] = columns.LogPenalty(i, p.MixingWeight);
            }
        }
    }

    /// <summary>Crystallising species, groups counted once.</summary>
    public int Count => columns.Count;

    /// <summary>Mean molar mass of everything, liquid species included [g/mol].</summary>
    public double MeanMolarMass => columns.MeanMolarMass;

    internal double[] Fraction => columns.Fraction;

    internal double[] LogFraction => columns.LogFraction;

    internal double[] EnthalpyOverR => columns.EnthalpyOverR;

    internal double[] SolidMass => columns.SolidMass;

    internal double[] InverseMelting { get; }

    internal double[] LogPenalty { get; }

    internal ClassRange[] Classes { get; }

    internal sealed record ClassRange(CrystalClass Class, int Start, int End, ClassParameters Parameters, double Amount);
}
