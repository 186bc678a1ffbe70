namespace Materia.Api.Evaluations.Reading;

/// <summary>The writing of JSON Pointers (RFC 6901).</summary>
internal static class JsonPointer
{
    /// <summary>A member's name as a step of a pointer, cut where it is longer than any that is known.</summary>
    public static string Escape(string member)
    {
        var cut = member.Length <= 100 ? member : member[..100];
        return cut.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
    }
}
