namespace Materia.Api.Serving;

/// <summary>The release that new requests take, swapped as a whole; or why there is none yet.</summary>
public sealed class CurrentRelease
{
    private volatile ServedRelease? served;
    private volatile Obstacle? obstacle = new("The service is starting.", TimeSpan.FromSeconds(1));

    /// <summary>The present release, or <see langword="null"/> before the first one is loaded.</summary>
    public ServedRelease? Take() => served;

    /// <summary>Why the service is not ready, or <see langword="null"/> when it is.</summary>
    public Obstacle? Obstacle => served is null ? obstacle : null;

    /// <summary>
    /// Makes <paramref name="next"/> the release of all requests that start from now on. Requests under way keep theirs; the
    /// garbage collector takes it when the last of them ends.
    /// </summary>
    public void Swap(ServedRelease next) => served = next;

    /// <summary>Notes why there is no release yet.</summary>
    public void NotYet(Obstacle reason) => obstacle = reason;
}

/// <summary>Why the service is not ready. Shown to anyone, so it names no host, user or secret.</summary>
/// <param name="Reason">A sentence for people.</param>
/// <param name="NextTry">When the service tries again.</param>
public sealed record Obstacle(string Reason, TimeSpan NextTry);
