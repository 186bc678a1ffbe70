namespace Materia.Api.Serving;

/// <summary>How long to wait between tries at something that is down.</summary>
public static class BackOff
{
    private static readonly TimeSpan First = TimeSpan.FromSeconds(0.5);

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    /// <summary>
    /// The wait after the failure number <paramref name="failures"/> (from 1): half a second, doubled each time, half a minute at
    /// most, give or take a quarter at random so that nodes which failed together do not come back together.
    /// </summary>
    public static TimeSpan After(int failures, Random random)
    {
        var doubled = First * Math.Pow(2, Math.Min(failures - 1, 10));
        var even = doubled < Longest ? doubled : Longest;
        return even * (0.75 + (random.NextDouble() / 2));
    }
}
