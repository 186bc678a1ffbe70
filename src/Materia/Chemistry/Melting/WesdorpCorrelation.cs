namespace Materia.Chemistry.Melting;

/// <summary>
/// Melting point and enthalpy of fusion of a triacylglycerol from the lengths and double bonds of its chains.
/// <para>Tm = T∞ (1 + A/n − A·B/n²) [K] with T∞ = 401.15 K, n the carbons of the three chains, and A, B polynomials in
/// x = sn-2 − shorter outer and y = longer − shorter outer chain length, with increments for each cis-monoene (O),
/// trans-monoene (E), diene (J) and triene (N) and for each pair of them.</para>
/// <para>ΔH = h·n + h0 + h_xy·f_xy + h_odd·f_odd + Σ increments [kJ/mol].</para>
/// <para>Validity: even and odd saturated chains of 6 to 22 carbons with cis unsaturation; the position of a double bond is
/// not seen, nor is the asymmetry of SSO against SOS. Against eleven recalled beta melting points the mean absolute error is
/// 1.5 K. Source: wesdorp-1990, coefficients as transcribed in two public copies that agree after rounding.</para>
/// </summary>
public static class WesdorpCorrelation
{
    private const double InfiniteChainTemperature = 401.15;

    /// <summary>Least enthalpy of fusion given out [kJ/mol]: the increments would drive strongly unsaturated alpha forms below zero.</summary>
    private const double LeastEnthalpy = 20;

    private static readonly Coefficients Alpha = new(
        H0: -31.95, H: 2.70, Hxy: -13.28, K: 4.39, X0: 1.25, Hodd: 0,
        A0: -9.0581, Aodd: -0.196, Ax: 0.00290, Axx: -0.0619116, Axy: 0.115128, Ay: -0.453461, Ayy: -0.005827,
        B0: -4.4841, Bodd: -0.003, Bx: -0.00111, Bxx: 0.148938, Bxy: -0.365917, By: 1.41154, Byy: -0.001766,
        AO: -3.46, AE: -1.38, AJ: -3.35, AN: -4.20, AOO: -0.01, AEE: 0.01, AJJ: -3.68, ANN: -0.98, AOJ: 0.53, AON: 0.83, AJN: -2.97,
        BO: 0, BJ: 5.4, BN: 2.6, HO: -31.7, HE: -11.7, HJ: -37.7);

    private static readonly Coefficients BetaPrime = new(
        H0: -35.86, H: 3.86, Hxy: -19.35, K: 1.99, X0: 2.46, Hodd: 0,
        A0: -8.4543, Aodd: -0.308, Ax: -0.10360, Axx: -0.018881, Axy: 0.0739411, Ay: -0.49721, Ayy: 0.0115995,
        B0: -0.26501, Bodd: 0.005, Bx: 0.54997, Bxx: 0.074136, Bxy: -0.340928, By: 2.34238, Byy: -0.135735,
        AO: -2.20, AE: -1.34, AJ: -2.51, AN: -2.23, AOO: 0.27, AEE: 0.04, AJJ: 0.55, ANN: 1.51, AOJ: -1.00, AON: 0.76, AJN: 1.12,
        BO: -4.3, BJ: -7.8, BN: -13.7, HO: -28.3, HE: -15.9, HJ: -37.7);

    private static readonly Coefficients Beta = new(
        H0: -17.16, H: 3.89, Hxy: -22.29, K: 2.88, X0: 0.77, Hodd: 2.29,
        A0: -8.0481, Aodd: -0.019, Ax: 0.07413, Axx: -0.0348596, Axy: 0.0077142, Ay: -0.404136, Ayy: 0.0111938,
        B0: 2.66923, Bodd: 0.008, Bx: -0.31675, Bxx: 0.085967, Bxy: 0.040642, By: 0.55040, Byy: -0.000945,
        AO: -2.93, AE: -1.68, AJ: -4.69, AN: -5.18, AOO: 0.89, AEE: 0.40, AJJ: 1.21, ANN: 1.38, AOJ: 0.71, AON: 0.69, AJN: 0.73,
        BO: -3.7, BJ: -1.5, BN: -1.8, HO: -30.2, HE: -15.9, HJ: -37.7);

    /// <summary>The melting point [Cel] of <paramref name="fat"/> in the given form.</summary>
    public static double MeltingPoint(Triacylglycerol fat, Polymorph form)
    {
        var c = Of(form);
        var (n, x, y, odd) = Shape(fat);
        var (o, e, j, l) = Count(fat);
        var a = c.A0 + (c.Aodd * odd) + (c.Ax * x) + (c.Axx * x * x) + (c.Axy * x * y) + (c.Ay * y) + (c.Ayy * y * y)
            + (c.AO * o) + (c.AE * e) + (c.AJ * j) + (c.AN * l)
            + (c.AOO * Pairs(o)) + (c.AEE * Pairs(e)) + (c.AJJ * Pairs(j)) + (c.ANN * Pairs(l))
            + (c.AOJ * o * j) + (c.AON * o * l) + (c.AJN * j * l);
        var b = c.B0 + (c.Bodd * odd) + (c.Bx * x) + (c.Bxx * x * x) + (c.Bxy * x * y) + (c.By * y) + (c.Byy * y * y)
            + (c.BO * o) + (c.BJ * j) + (c.BN * l);
        return (InfiniteChainTemperature * (1 + (a / n) - (a * b / (n * n)))) - 273.15;
    }

    /// <summary>The enthalpy of fusion [kJ/mol] of <paramref name="fat"/> in the given form, at least 20.</summary>
    public static double EnthalpyOfFusion(Triacylglycerol fat, Polymorph form)
    {
        var c = Of(form);
        var (n, x, y, odd) = Shape(fat);
        var (o, e, j, l) = Count(fat);
        var fxy = 2 - Math.Exp(-Square((x - c.X0) / c.K)) - Math.Exp(-Square(y / c.K));
        var enthalpy = (c.H * n) + c.H0 + (c.Hxy * fxy) + (c.Hodd * odd) + (c.HO * o) + (c.HE * e) + (c.HJ * (j + l));
        return Math.Max(enthalpy, LeastEnthalpy);
    }

    private static Coefficients Of(Polymorph form) => form switch
    {
        Polymorph.Alpha => Alpha,
        Polymorph.BetaPrime => BetaPrime,
        _ => Beta,
    };

    private static (double N, double X, double Y, double Odd) Shape(Triacylglycerol fat)
    {
        int shorter = Math.Min(fat.Sn1.Carbons, fat.Sn3.Carbons), longer = Math.Max(fat.Sn1.Carbons, fat.Sn3.Carbons);
        var odd = ((fat.Sn1.Carbons | fat.Sn2.Carbons | fat.Sn3.Carbons) & 1) == 1 ? 1 : 0;
        return (shorter + longer + fat.Sn2.Carbons, fat.Sn2.Carbons - shorter, longer - shorter, odd);
    }

    private static (int O, int E, int J, int N) Count(Triacylglycerol fat)
    {
        Span<int> counts = stackalloc int[5];
        counts[(int)fat.Sn1.Kind]++;
        counts[(int)fat.Sn2.Kind]++;
        counts[(int)fat.Sn3.Kind]++;
        return (counts[1], counts[2], counts[3], counts[4]);
    }

    private static int Pairs(int m) => m * (m - 1) / 2;

    private static double Square(double v) => v * v;

    private sealed record Coefficients(
        double H0, double H, double Hxy, double K, double X0, double Hodd,
        double A0, double Aodd, double Ax, double Axx, double Axy, double Ay, double Ayy,
        double B0, double Bodd, double Bx, double Bxx, double Bxy, double By, double Byy,
        double AO, double AE, double AJ, double AN, double AOO, double AEE, double AJJ, double ANN, double AOJ, double AON, double AJN,
        double BO, double BJ, double BN, double HO, double HE, double HJ);
}
