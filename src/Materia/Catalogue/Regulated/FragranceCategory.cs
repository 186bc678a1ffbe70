namespace Materia.Catalogue.Regulated;

/// <summary>The categories of product of the fragrance standards (IFRA Standards, 49th Amendment and later).</summary>
public static class FragranceCategory
{
    /// <summary>All categories, in the order of the standards; 10A and later are no cosmetic products.</summary>
    public static IReadOnlyList<string> All { get; } =
        ["1", "2", "3", "4", "5A", "5B", "5C", "5D", "6", "7A", "7B", "8", "9", "10A", "10B", "11A", "11B", "12"];
}
