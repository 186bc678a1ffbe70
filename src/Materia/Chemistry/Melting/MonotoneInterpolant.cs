namespace Materia.Chemistry.Melting;

/// <summary>
/// Fills the gaps of a falling or rising row with piecewise cubics that keep it so (slopes by the harmonic mean of neighbouring
/// secants, after Fritsch and Butland): no value leaves the interval of the known ones on either side.
/// </summary>
internal static class MonotoneInterpolant
{
    /// <summary>Fills <paramref name="values"/> where <paramref name="known"/> is false; the first and the last are known.</summary>
    public static void Fill(double[] values, bool[] known)
    {
        var (from, slope) = (0, 0.0);
        for (var to = Next(known, 0); to > 0;)
        {
            var after = Next(known, to);
            var secant = (values[to] - values[from]) / (to - from);
            var slopeAfter = after < 0 ? 0 : Mean(secant, to - from, (values[after] - values[to]) / (after - to), after - to);
            slope = from == 0 ? secant : slope;
            for (var i = from + 1; i < to; i++)
            {
                values[i] = Cubic((double)(i - from) / (to - from), to - from, values[from], values[to], slope, after < 0 ? secant : slopeAfter);
            }

            (from, to, slope) = (to, after, slopeAfter);
        }
    }

    private static int Next(bool[] known, int after) => Array.IndexOf(known, true, after + 1);

    private static double Mean(double left, double leftWidth, double right, double rightWidth)
    {
        if (left * right <= 0)
        {
            return 0;
        }

        double a = (2 * rightWidth) + leftWidth, b = rightWidth + (2 * leftWidth);
        return (a + b) / ((a / left) + (b / right));
    }

    private static double Cubic(double t, double width, double left, double right, double leftSlope, double rightSlope)
    {
        var u = 1 - t;
        return (u * u * (((1 + (2 * t)) * left) + (t * width * leftSlope))) + (t * t * (((1 + (2 * u)) * right) - (u * width * rightSlope)));
    }
}
