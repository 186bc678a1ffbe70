using Materia.Catalogue;

namespace Materia.Chemistry;

/// <summary>A share of the formula by mass with the range it may lie in; exact decimals, since thresholds decide on it.</summary>
/// <param name="Low">The least share [%].</param>
/// <param name="Typical">The share to compute with [%].</param>
/// <param name="High">The greatest share [%].</param>
public sealed record ShareRange(decimal Low, decimal Typical, decimal High)
{
    /// <summary>Nothing.</summary>
    public static ShareRange None { get; } = new(0, 0, 0);

    /// <summary>The sum of two shares.</summary>
    public static ShareRange operator +(ShareRange a, ShareRange b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        return new ShareRange(a.Low + b.Low, a.Typical + b.Typical, a.High + b.High);
    }

    /// <summary>The share to show: to the eighth decimal, without noughts at the end.</summary>
    internal ShareRange Trimmed() => new(ExactShare.Trim(Low), ExactShare.Trim(Typical), ExactShare.Trim(High));
}
