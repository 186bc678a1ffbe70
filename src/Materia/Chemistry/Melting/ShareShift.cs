namespace Materia.Chemistry.Melting;

/// <summary>
/// Moves shares of a whole from one side to the other as far as their limits allow, the sum unchanged: each share that grows takes
/// the same part of its room to grow, each that shrinks the same part of its room to shrink.
/// </summary>
/// <param name="shares">The shares.</param>
/// <param name="low">The least of each.</param>
/// <param name="high">The greatest of each.</param>
internal sealed class ShareShift(double[] shares, double[] low, double[] high)
{
    /// <summary>The shares after moving as much as the limits allow, or less.</summary>
    /// <param name="grows">Tells by index which shares grow; the others shrink.</param>
    /// <param name="worth">What one part of each share counts towards a sum that must not pass its bound.</param>
    /// <param name="allowed">How far that sum may go, up or down; infinite when there is no bound, nothing is moved when it is negative.</param>
    /// <returns>The moved shares; <see langword="null"/> when nothing can move.</returns>
    public double[]? Most(Predicate<int> grows, Func<int, double> worth, double allowed)
    {
        double up = 0, down = 0, gained = 0, lost = 0;
        for (var i = 0; i < shares.Length; i++)
        {
            var room = Room(i, grows(i));
            (up, gained) = grows(i) ? (up + room, gained + (room * worth(i))) : (up, gained);
            (down, lost) = grows(i) ? (down, lost) : (down + room, lost + (room * worth(i)));
        }

        if (up <= 0 || down <= 0)
        {
            return null;
        }

        var change = Math.Abs((gained / up) - (lost / down));
        var moved = Math.Min(Math.Min(up, down), change > 0 ? allowed / change : double.PositiveInfinity);
        return moved > 0 ? [.. shares.Select((s, i) => s + (grows(i) ? moved / up : -moved / down) * Room(i, grows(i)))] : null;
    }

    private double Room(int i, bool grows) => Math.Max(0, grows ? high[i] - shares[i] : shares[i] - low[i]);
}
