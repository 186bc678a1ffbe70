namespace Materia.Seed.Reading;

/// <summary>A file of the seed directory that faults can point into.</summary>
/// <param name="path">The path relative to the seed directory, with forward slashes.</param>
internal abstract class SeedFile(string path)
{
    /// <summary>The path relative to the seed directory, with forward slashes.</summary>
    public string Path { get; } = path;

    /// <summary>The line, counted from 1, of the part that <paramref name="pointer"/> (RFC 6901) names, or of the nearest part around it.</summary>
    public abstract int? LineOf(string pointer);
}
