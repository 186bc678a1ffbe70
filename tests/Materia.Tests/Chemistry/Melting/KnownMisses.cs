namespace Materia.Tests.Chemistry.Melting;

/// <summary>Rows that the model misses, and why; each is held outside its tolerance, so that a change shows.</summary>
internal static class KnownMisses
{
    public static IReadOnlyDictionary<string, string> ById { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
    };
}
