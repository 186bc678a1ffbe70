namespace Materia.Data;

/// <summary>What publishing did.</summary>
/// <param name="Number">The number of the current release after it.</param>
/// <param name="Action">What was done.</param>
public sealed record PublishOutcome(int Number, PublishAction Action)
{
    /// <summary>True when a new release was made.</summary>
    public bool Changed => Action == PublishAction.Published;
}

/// <summary>What publishing can do.</summary>
public enum PublishAction
{
    /// <summary>A new release was made.</summary>
    Published,

    /// <summary>Nothing: the current release holds the same content.</summary>
    Unchanged,

    /// <summary>Nothing: the current release was made by a curator, and seed files do not replace it at a start.</summary>
    HeldBack,
}
