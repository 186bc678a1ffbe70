using Materia.Chemistry.Melting;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>
/// The equilibrium the slow and certain way, to check the solver against: three nested loops (liquid amount, amount of each
/// class, each species), bisections outside and a Newton step on a convex function inside, all in logarithms, no warm start.
/// </summary>
internal static class NestedBisection
{
    private const double GasConstant = 8.314462618;

    /// <summary>Solid content [% by mass] at <paramref name="celsius"/>.</summary>
    public static double SolidContentAt(IReadOnlyList<Species> species, Func<CrystalClass, ClassParameters> parameters, double celsius)
    {
        var total = species.Sum(s => s.Moles);
        var mass = species.Sum(s => s.Moles * s.MolarMass) / total;
        var kelvin = celsius + 273.15;
        var classes = species.Where(s => s.Class != CrystalClass.Liquid).GroupBy(s => s.Class)
            .Select(g => new Group(parameters(g.Key), [.. g.Select(s => s.Moles / total)],
                [.. g.Select(s => (s.EnthalpyOfFusion / GasConstant * ((1 / kelvin) - (1 / s.MeltingPoint))))],
                [.. g.Select(s => s.MolarMass / mass)]))
            .ToArray();
        var liquidOnly = species.Where(s => s.Class == CrystalClass.Liquid).Sum(s => s.Moles) / total;
        double Remainder(double logL) => liquidOnly + classes.Sum(c => c.Liquid(logL).Sum());

        double low = -14, high = 0;
        if (Remainder(0) < 1 - 1e-14)
        {
            for (var i = 0; i < 60; i++)
            {
                var middle = (low + high) / 2;
                (low, high) = Remainder(middle) / Math.Exp(middle) > 1 ? (middle, high) : (low, middle);
            }

            high = (low + high) / 2;
        }

        return 100 * classes.Sum(c => c.Parameters.Crystallinity * c.Liquid(high).Select((l, i) => (c.Z[i] - l) * c.MassRatio[i]).Sum());
    }

    private sealed record Group(ClassParameters Parameters, double[] Z, double[] LogK, double[] MassRatio)
    {
        public double[] Liquid(double logL)
        {
            var theta = Parameters.MixingWeight;
            if (theta <= 0)
            {
                return [.. Z.Select((z, i) => Math.Min(z, Math.Exp(logL - LogK[i])))];
            }

            if (Z.Select((z, i) => (LogK[i] + Math.Log(z) - logL) / theta).Select(Math.Exp).Sum() <= 1)
            {
                return Z;
            }

            double low = -60, high = Math.Log(Z.Sum());
            var liquid = Z;
            for (var step = 0; step < 60; step++)
            {
                var logS = (low + high) / 2;
                liquid = [.. Z.Select((z, i) => One(z, LogK[i] - logL, theta, logS))];
                (low, high) = Z.Sum() - liquid.Sum() > Math.Exp(logS) ? (logS, high) : (low, logS);
            }

            return liquid;
        }

        private static double One(double z, double logRatio, double theta, double logS)
        {
            var u = Math.Min(Math.Log(z), -logRatio + (theta * (Math.Log(z) - logS)));
            for (var i = 0; i < 100; i++)
            {
                var s = Math.Exp(logS + ((logRatio + u) / theta));
                var l = Math.Exp(u);
                var step = (Math.Log(l + s) - Math.Log(z)) / ((l + (s / theta)) / (l + s));
                u -= step;
                if (Math.Abs(step) < 1e-13)
                {
                    break;
                }
            }

            return Math.Min(Math.Exp(u), z);
        }
    }
}
