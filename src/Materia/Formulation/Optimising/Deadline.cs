namespace Materia.Formulation.Optimising;

/// <summary>
/// How long a search may go on. Searches do a fixed amount of work, so that the same request gives the same answer; the clock only cuts
/// that short.
/// </summary>
public sealed class Deadline
{
    private readonly TimeProvider clock;
    private readonly long start;
    private readonly TimeSpan budget;
    private readonly CancellationToken cancellation;

    /// <summary>Starts the clock.</summary>
    /// <param name="clock">What tells the time.</param>
    /// <param name="budget">How long the search may take.</param>
    /// <param name="cancellation">Cancelled when nobody waits any more.</param>
    public Deadline(TimeProvider clock, TimeSpan budget, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(clock);
        this.clock = clock;
        this.budget = budget;
        this.cancellation = cancellation;
        start = clock.GetTimestamp();
    }

    /// <summary>True when the search was cut before its work was done.</summary>
    public bool Cut { get; private set; }

    /// <summary>Whether to stop; remembers that it said so.</summary>
    /// <exception cref="OperationCanceledException">Nobody waits any more.</exception>
    public bool IsOver()
    {
        cancellation.ThrowIfCancellationRequested();
        return Cut |= clock.GetElapsedTime(start) >= budget;
    }
}
