namespace Materia.Chemistry.Rules;

/// <summary>How much goes into a jar, and how many jars a batch fills: arithmetic of volumes.</summary>
public static class FillMass
{
    /// <summary>The head space left when nothing is said [%]; a usual allowance, not a standard's.</summary>
    public const double UsualHeadspacePercent = 5;

    /// <summary>The mass in one container: V (1 − h/100) ρ [g].</summary>
    /// <param name="brimVolume">Volume V to the brim [mL].</param>
    /// <param name="density">Density ρ of what is filled, whipped if it is [g/mL].</param>
    /// <param name="headspacePercent">Head space h, 0 to below 100 [%].</param>
    public static double Of(double brimVolume, double density, double headspacePercent = UsualHeadspacePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(headspacePercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(headspacePercent, 100);
        return brimVolume * (1 - (headspacePercent / 100)) * density;
    }

    /// <summary>The containers that a batch needs: its mass less the loss, over the fill mass, rounded up.</summary>
    /// <param name="batchMass">Mass of the batch [g].</param>
    /// <param name="lossPercent">What stays in the beaker, 0 to 100 [%].</param>
    /// <param name="fillMass">Mass in one container, above nought [g].</param>
    public static int Containers(double batchMass, double lossPercent, double fillMass)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fillMass);
        return (int)Math.Ceiling(batchMass * (1 - (lossPercent / 100)) / fillMass);
    }
}
