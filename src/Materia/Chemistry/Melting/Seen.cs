using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>Where a figure of a pure species was seen, and how.</summary>
/// <param name="Source">A source key, or the key of the method that set the figure.</param>
/// <param name="Evidence">The grade; <see langword="null"/> for a figure that a method sets, whose description says on what.</param>
public readonly record struct Seen(string Source, Evidence? Evidence)
{
    /// <summary>A figure that the melting model sets.</summary>
    public static Seen InModel { get; } = new(MeltingSum.Method, null);

    /// <summary>A figure from memory, checked nowhere.</summary>
    public static Seen Recalled { get; } = new("recalled", Catalogue.Evidence.Memory);

    /// <summary>The grade as a word of the catalogue, or <c>set-by-method</c>.</summary>
    public string Grade => Evidence is { } evidence ? KebabCase<Evidence>.Word(evidence) : "set-by-method";

    /// <summary>Source and grade as an explanation writes them.</summary>
    public override string ToString() => $"{Source}, {Grade}";
}
