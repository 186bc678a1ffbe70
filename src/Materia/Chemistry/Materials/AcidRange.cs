using Materia.Catalogue;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Materials;

/// <summary>The limits that a standard sets for each acid of an oil, and what they guarantee. Every bound is worked out over shares that add up to 100 %.</summary>
internal sealed class AcidRange
{
    private readonly double[] low;
    private readonly double[] high;

    private AcidRange(FattyAcidProfile stored, FattyAcid[] acids, double[] low, double[] high)
    {
        Stored = stored;
        Acids = acids;
        this.low = low;
        this.high = high;
    }

    /// <summary>The profile as stored.</summary>
    public FattyAcidProfile Stored { get; }

    /// <summary>The acids.</summary>
    public FattyAcid[] Acids { get; }

    /// <summary>Finds the first range profile whose limits allow a whole composition; <see langword="null"/> when there is none.</summary>
    public static AcidRange? Find(Ingredient ingredient, Release release)
    {
        foreach (var profile in ingredient.FattyAcidProfiles)
        {
            if (profile.Kind == ProfileKind.Range && profile.Of == ProfilePart.Acids && Read(profile, release) is { } range)
            {
                return range;
            }
        }

        return null;
    }

    /// <summary>Bounds Σ f·x with x in percent.</summary>
    public (double Low, double High) Bound(Func<FattyAcid, double> factor)
    {
        Span<double> factors = stackalloc double[Acids.Length];
        for (var i = 0; i < factors.Length; i++)
        {
            factors[i] = factor(Acids[i]);
        }

        return GuaranteedBounds.Linear(factors, low, high, 100)!.Value;
    }

    /// <summary>Bounds the mean by moles of a figure of the acids.</summary>
    public (double Low, double High) BoundMean(Func<FattyAcid, double> figure)
    {
        Span<double> numerators = stackalloc double[Acids.Length];
        Span<double> denominators = stackalloc double[Acids.Length];
        for (var i = 0; i < numerators.Length; i++)
        {
            denominators[i] = 1 / (double)Acids[i].MolarMass;
            numerators[i] = figure(Acids[i]) * denominators[i];
        }

        return GuaranteedBounds.Ratio(numerators, denominators, low, high, 100)!.Value;
    }

    private static AcidRange? Read(FattyAcidProfile stored, Release release)
    {
        // A standard names some thirty acids; a profile beyond 64 rows is not one, and the bounds work on the stack.
        if (stored.Shares.Count is 0 or > 64)
        {
            return null;
        }

        var acids = new FattyAcid[stored.Shares.Count];
        var low = new double[acids.Length];
        var high = new double[acids.Length];
        for (var i = 0; i < acids.Length; i++)
        {
            var share = stored.Shares[i];
            if (release.FindFattyAcid(share.Acid) is not { } acid)
            {
                return null;
            }

            acids[i] = acid;
            low[i] = (double)(share.Low ?? share.Typical ?? 0);
            high[i] = (double)(share.High ?? share.Typical ?? 100);
            if (low[i] > high[i])
            {
                return null;
            }
        }

        return GuaranteedBounds.Linear(new double[acids.Length], low, high, 100) is null ? null : new AcidRange(stored, acids, low, high);
    }
}
