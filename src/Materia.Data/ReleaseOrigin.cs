namespace Materia.Data;

/// <summary>Where a release's content came from.</summary>
public enum ReleaseOrigin
{
    /// <summary>From the seed files.</summary>
    Seed,

    /// <summary>From a curator's edits in the running service, which a start with other seed files must not undo.</summary>
    Curation,
}
