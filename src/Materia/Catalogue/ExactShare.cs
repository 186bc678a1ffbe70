namespace Materia.Catalogue;

/// <summary>Showing exact shares. Verdicts are made before, on every digit.</summary>
internal static class ExactShare
{
    private const int Decimals = 8;
    private const int Base = 10;

    /// <summary>A share to show: rounded to the eighth decimal, without noughts at the end.</summary>
    public static decimal Trim(decimal share)
    {
        if (share.Scale == 0)
        {
            return share;
        }

        var rounded = share.Scale > Decimals ? decimal.Round(share, Decimals) : share;
        Span<int> bits = stackalloc int[4];
        decimal.GetBits(rounded, bits);
        if (bits[2] != 0)
        {
            // Too long for the quick way; shares of formulas never are.
            return rounded / 1.0000000000000000000000000000m;
        }

        var digits = (uint)bits[0] | ((ulong)(uint)bits[1] << 32);
        if (digits % Base != 0)
        {
            return rounded;
        }

        var scale = rounded.Scale;
        while (scale > 0 && digits % Base == 0)
        {
            digits /= Base;
            scale--;
        }

        return new decimal((int)digits, (int)(digits >> 32), 0, decimal.IsNegative(rounded), scale);
    }
}
