namespace Materia.Chemistry.Melting;

/// <summary>
/// The species of a blend as columns, grouped by class, with amounts as mole fractions of the whole. Liquid species are one
/// sum: nothing about them matters but their amount.
/// </summary>
public sealed class SpeciesSystem
{
    internal const double GasConstant = 8.314462618;

    /// <summary>Groups and normalises <paramref name="species"/>.</summary>
    /// <param name="species">The species; amounts need not add up to anything.</param>
    /// <param name="parameters">How each class crystallises.</param>
    public SpeciesSystem(IReadOnlyCollection<Species> species, Func<CrystalClass, ClassParameters> parameters)
    {
        var total = species.Sum(s => s.Moles);
        var crystallising = species.Where(s => s.Class != CrystalClass.Liquid && s.Moles > 0).OrderBy(s => s.Class).ToArray();
        Count = crystallising.Length;
        Fraction = new double[Count];
        LogFraction = new double[Count];
        InverseMelting = new double[Count];
        EnthalpyOverR = new double[Count];
        LogPenalty = new double[Count];
        SolidMass = new double[Count];
        var mass = total > 0 ? species.Sum(s => s.Moles * s.MolarMass) / total : 0;
        MeanMolarMass = mass;
        for (var i = 0; i < Count; i++)
        {
            var s = crystallising[i];
            Fraction[i] = s.Moles / total;
            LogFraction[i] = Math.Log(Fraction[i]);
            InverseMelting[i] = 1 / s.MeltingPoint;
            EnthalpyOverR[i] = s.EnthalpyOfFusion / GasConstant;
            LogPenalty[i] = s.LogPenalty;
            SolidMass[i] = s.MolarMass / mass;
        }

        Classes = [.. crystallising.Index().GroupBy(p => p.Item.Class, p => p.Index).Select(g => new ClassRange(g.Key, g.First(), g.Last() + 1, parameters(g.Key), g.Sum(i => Fraction[i])))];
    }

    /// <summary>Crystallising species.</summary>
    public int Count { get; }

    /// <summary>Mean molar mass of everything, liquid species included [g/mol].</summary>
    public double MeanMolarMass { get; }

    internal double[] Fraction { get; }

    internal double[] LogFraction { get; }

    internal double[] InverseMelting { get; }

    internal double[] EnthalpyOverR { get; }

    internal double[] LogPenalty { get; }

    /// <summary>Molar mass over the mean molar mass: turns a mole fraction of solid into a mass fraction.</summary>
    internal double[] SolidMass { get; }

    internal ClassRange[] Classes { get; }

    internal sealed record ClassRange(CrystalClass Class, int Start, int End, ClassParameters Parameters, double Amount);
}
