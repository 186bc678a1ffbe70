using Materia.Catalogue;
using Materia.Chemistry.Melting;

namespace Materia.Formulation.Optimising;

/// <summary>Solid contents and clear point of a blend with the true melting model, the species of each material looked up once.</summary>
internal sealed class MeltingColumns
{
    /// <summary>How near the clear point is found [K]; a tenth of what the model is good for.</summary>
    private const double Accuracy = 0.02;

    /// <summary>Solid within this share of the level is at the level: a hundredth of a kelvin on any fat's curve.</summary>
    private const double Near = 1e-3;

    private const double Highest = 130;
    private const double Stride = 10;
    private readonly MeltingSpace space;
    private readonly (int Index, double Moles)[][] amounts;
    private readonly double[] fat;
    private readonly double[] unknown;
    private readonly double[] moles;

    public MeltingColumns(Release release, IReadOnlyList<MaterialColumn> columns)
    {
        space = MeltingSpace.For([.. columns.SelectMany(c => c.Parts).Select(p => p.Ingredient)], release);
        amounts = [.. columns.Select(c => c.Parts.SelectMany(p => Known(p.Ingredient) ? space.AmountsOf(p.Ingredient).Select(a => (a.Index, a.MolesPerGram * (double)p.Share)) : []).ToArray())];
        fat = [.. columns.Select(c => c.Parts.Where(p => Known(p.Ingredient)).Sum(p => (double)p.Share))];
        unknown = [.. columns.Select(c => c.Parts.Where(p => space.Describe(p.Ingredient).Unknown is not null).Sum(p => (double)p.Share))];
        moles = new double[space.Species.Count];
    }

    /// <summary>The share of the fat phase whose melting is known, 0 to 1.</summary>
    public double Cover(ReadOnlySpan<double> x, ReadOnlySpan<int> active)
    {
        double k = 0, u = 0;
        foreach (var j in active)
        {
            k += x[j] * fat[j];
            u += x[j] * unknown[j];
        }

        return k + u > 0 ? k / (k + u) : 1;
    }

    /// <summary>The equilibrium of a blend; <see langword="null"/> when it has no fat phase.</summary>
    public PhaseEquilibrium? Of(ReadOnlySpan<double> x, ReadOnlySpan<int> active)
    {
        Array.Clear(moles);
        double mass = 0;
        double total = 0;
        foreach (var j in active)
        {
            total += x[j];
            mass += x[j] * fat[j];
        }

        foreach (var j in active)
        {
            foreach (var (index, perGram) in amounts[j])
            {
                moles[index] += x[j] / total * perGram;
            }
        }

        return mass > 0
            ? new PhaseEquilibrium(new BlendSpecies(space, moles) { Model = MeltingModel.ClassSolutions, FatMass = mass / total, FillerMass = 0, UnknownMass = 0, Warnings = [], Missing = [] }.System(ClassTable.Of))
            : null;
    }

    /// <summary>
    /// Where the blend is clear, as its melting section has it: 1 % solid is left, or a twentieth of what is solid at 10 °C where that is
    /// less. Found between two temperatures whose solid contents straddle that, by regula falsi on the logarithm with the Illinois rule.
    /// </summary>
    /// <param name="equilibrium">The equilibrium of the blend.</param>
    /// <param name="known">Temperatures [Cel] and solid contents [%] that were worked out already.</param>
    public static double ClearPoint(PhaseEquilibrium equilibrium, List<(double Temperature, double Solid)> known)
    {
        var level = Math.Min(1, SolidAt(10) / 20);
        if (!(level > 0) || !(SolidAt(SolidContentCurve.From) > level))
        {
            return double.NaN;
        }

        double low = SolidContentCurve.From, high = Highest;
        double above = Excess(SolidAt(low)), below = Excess(0);
        foreach (var (temperature, solid) in known)
        {
            if (solid > level && temperature > low)
            {
                (low, above) = (temperature, Excess(solid));
            }
        }

        // Steps of ten kelvin cost little, since each solution starts from the last.
        for (high = low + Stride; high < Highest && SolidAt(high) is var solid && (below = Excess(solid)) > 0; high += Stride)
        {
            (low, above) = (high, below);
        }

        // At the upper end of the search nothing is taken to be solid any more.
        below = below > 0 ? Excess(0) : below;
        var side = 0;
        while (high - low > Accuracy)
        {
            var middle = Math.Clamp(low + ((high - low) * above / (above - below)), low + (Accuracy / 4), high - (Accuracy / 4));
            var error = Excess(equilibrium.SolidContentAt(middle));
            if (Math.Abs(error) < Near)
            {
                return middle;
            }

            if (error > 0)
            {
                (low, above) = (middle, error);
                below = side > 0 ? below / 2 : below;
                side = 1;
            }
            else
            {
                (high, below) = (middle, error);
                above = side < 0 ? above / 2 : above;
                side = -1;
            }
        }

        return (low + high) / 2;

        double Excess(double solid) => Math.Log(Math.Max(solid, 1e-4) / level);

        double SolidAt(double temperature)
        {
            var place = known.FindIndex(k => k.Temperature == temperature);
            if (place < 0)
            {
                place = known.Count;
                known.Add((temperature, equilibrium.SolidContentAt(temperature)));
            }

            return known[place].Solid;
        }
    }

    private bool Known(Ingredient ingredient) => space.Describe(ingredient) is { IsFiller: false, Unknown: null };
}
