namespace Materia.Regulation;

/// <summary>The share of a substance in a formula [%], by mass; exact decimals, since thresholds are decided at the last digit.</summary>
/// <param name="Low">The least share that the composition of the materials allows.</param>
/// <param name="Typical">The usual share; absent where the usual share in some material is not known.</param>
/// <param name="High">The greatest share that the composition of the materials allows, which decides.</param>
public readonly record struct Amount(decimal Low, decimal? Typical, decimal High)
{
    /// <summary>Nothing.</summary>
    public static Amount None { get; } = new(0, 0, 0);

    /// <summary>The sum of two shares.</summary>
    public static Amount operator +(Amount a, Amount b) => new(a.Low + b.Low, a.Typical + b.Typical, a.High + b.High);

    /// <summary>The share times a number that is not negative.</summary>
    public static Amount operator *(Amount a, decimal factor) => new(a.Low * factor, a.Typical * factor, a.High * factor);

    /// <summary>The part of a part: this share [%] of which <paramref name="inner"/> percent is meant.</summary>
    public Amount Of(Amount inner) => new(Low * inner.Low / 100, Typical * inner.Typical / 100, High * inner.High / 100);

    /// <summary>A share to show: rounded to the eighth decimal, without noughts at the end. Verdicts are made before.</summary>
    internal static decimal Trim(decimal share) => decimal.Round(share, 8) / 1.0000000000000000000000000000m;

    /// <summary>The share to show, see <see cref="Trim"/>.</summary>
    internal Amount Trimmed() => new(Trim(Low), Typical is { } typical ? Trim(typical) : null, Trim(High));
}
