namespace Materia.Seed;

/// <summary>Something wrong in the seed data.</summary>
/// <param name="File">The file, relative to the seed directory, with forward slashes.</param>
/// <param name="Line">The line, counted from 1, where one can be named.</param>
/// <param name="Message">What is wrong and what to do about it.</param>
public sealed record SeedFault(string File, int? Line, string Message)
{
    /// <summary>The fault as <c>file:line: message</c>, the form that editors turn into a link.</summary>
    public override string ToString() => Line is { } line ? $"{File}:{line}: {Message}" : $"{File}: {Message}";
}
