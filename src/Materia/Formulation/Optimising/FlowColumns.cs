using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Formulation.Optimising;

/// <summary>The viscosity of a blend at one temperature as its flow section works it out, prepared by material: ln μ and what it rests on.</summary>
internal sealed class FlowColumns
{
    private readonly double[] liquidMass;
    private readonly double[] liquidVolume;
    private readonly double[] logs;
    private readonly double[] powderVolume;
    private readonly double[] packedVolume;
    private readonly double[] otherVolume;
    private readonly double[] known;

    public FlowColumns(double temperature, IReadOnlyList<MaterialColumn> columns, Func<Ingredient, Material> find)
    {
        liquidMass = new double[columns.Count];
        liquidVolume = new double[columns.Count];
        logs = new double[columns.Count];
        powderVolume = new double[columns.Count];
        packedVolume = new double[columns.Count];
        otherVolume = new double[columns.Count];
        known = new double[columns.Count];
        var index = FlowTemperatures.All.Index().First(t => t.Item == temperature).Index;
        for (var j = 0; j < columns.Count; j++)
        {
            foreach (var part in columns[j].Parts)
            {
                Add(j, (double)part.Share, find(part.Ingredient), temperature, index);
            }
        }
    }

    /// <summary>ln of the viscosity [mPa.s], not a number where there is none, and the share of the mass that it rests on.</summary>
    public (double Value, double Cover) At(ReadOnlySpan<double> x, ReadOnlySpan<int> active)
    {
        double mass = 0, volume = 0, log = 0, powder = 0, packed = 0, other = 0, k = 0, total = 0;
        foreach (var j in active)
        {
            mass += x[j] * liquidMass[j];
            volume += x[j] * liquidVolume[j];
            log += x[j] * logs[j];
            powder += x[j] * powderVolume[j];
            packed += x[j] * packedVolume[j];
            other += x[j] * otherVolume[j];
            k += x[j] * known[j];
            total += x[j];
        }

        if (!(volume > 0))
        {
            return (double.NaN, k / total);
        }

        var value = (log / volume) + Math.Log(mass / volume);
        if (powder > 0)
        {
            var (phi, limit) = (powder / (volume + powder + other), powder / packed);
            value = phi > MaronPierce.Refusal * limit ? double.NaN : value + Math.Log(MaronPierce.RelativeViscosity(phi, limit));
        }

        return (value, k / total);
    }

    private void Add(int j, double share, Material material, double temperature, int index)
    {
        if (material.Density is not { } density)
        {
            return;
        }

        var rho = density.At(temperature).Value;
        if (material.IsPowder)
        {
            var packing = material.OilAbsorption is { } oil ? MaronPierce.PackingFromOilAbsorption((double)oil.Central(), rho) : MaronPierce.UsualPacking;
            powderVolume[j] += share / rho;
            packedVolume[j] += share / rho / packing;
        }
        else if (material.Viscosity is { } viscosity)
        {
            liquidMass[j] += share;
            liquidVolume[j] += share / rho;
            logs[j] += share / rho * Math.Log(viscosity.Kinematic[index].Value);
        }
        else
        {
            otherVolume[j] += share / rho;
            return;
        }

        known[j] += share;
    }
}
